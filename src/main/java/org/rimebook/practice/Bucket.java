package org.rimebook.practice;

import java.util.List;

/**
 * The bucket: keeps what enters it, less what evaporates or leaks, until somebody empties it.
 *
 * @param chargeMm charge at the start [mm]
 * @param visits visits in the order of time
 * @param losses what leaves it unseen
 */
record Bucket(double chargeMm, List<Visit> visits, List<Loss> losses) {

  /**
   * What became of the water.
   *
   * @param shownMm depth that hangs from the wires at each reading [mm]
   * @param finalMm depth at the end [mm]
   * @param evaporatedMm lost to the air or through a leak [mm]
   * @param removedMm emptied at visits [mm]
   * @param pouredMm poured in at visits [mm]
   */
  record Water(
      double[] shownMm, double finalMm, double evaporatedMm, double removedMm, double pouredMm) {}

  Water fill(Surroundings around, Precipitation entering) {
    Sampling sampling = around.sampling();
    double[] shown = new double[sampling.size()];
    double level = chargeMm;
    double evaporated = 0;
    double removed = 0;
    long before = sampling.span().fromMs();
    for (int i = 0; i < shown.length; i++) {
      long now = sampling.stampMs(i);
      level += entering.accumulatedMm(now) - entering.accumulatedMm(before);
      double loss = Math.min(level, lossMm(around, i));
      evaporated += loss;
      level -= loss;
      boolean off = false;
      for (Visit visit : visits) {
        if (before < visit.liftedMs() && visit.liftedMs() <= now) {
          double kept = visit.emptied() ? 0 : level;
          removed += level - kept;
          level = kept + visit.pouredMm();
        }
        off |= visit.offAt(now);
      }
      shown[i] = off ? 0 : level;
      before = now;
    }
    double poured = visits.stream().mapToDouble(Visit::pouredMm).sum();
    return new Water(shown, level, evaporated, removed, poured);
  }

  private double lossMm(Surroundings around, int index) {
    double loss = 0;
    for (Loss each : losses) {
      loss += each.lossMm(around, index);
    }
    return loss;
  }
}
