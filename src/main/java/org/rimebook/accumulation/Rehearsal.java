package org.rimebook.accumulation;

import java.util.Arrays;
import org.rimebook.station.Progress;

/**
 * Tries the estimator on its own answer: the catch it found, under the noise the season showed in
 * its dry time, is estimated anew, and the errors are held against the uncertainties it states:
 * those of days, which rest on dry levels, and those of hours, which rest on levels amid rain too.
 * What comes out is the season's own measure of how honest they are (a parametric bootstrap; Efron
 * & Tibshirani 1993, citation from memory).
 *
 * <p>Limits are our own choice.
 */
final class Rehearsal {

  private static final long HOUR_MS = 3_600_000;
  private static final long DAY_MS = 24 * HOUR_MS;
  private static final double DRY = 0.05;
  private static final int FEWEST_NODES = 200;
  private static final int FEWEST_SPANS = 20;

  /** Rounds in which the factor of levels within spells settles. */
  private static final int ROUNDS = 2;

  /** Shares of errors within one and two standard uncertainties when they are normal. */
  private static final double WITHIN_ONE = 0.6827;

  private static final double WITHIN_TWO = 0.9545;

  private static final double LEAST_FACTOR = 0.1;
  private static final double MOST_FACTOR = 9;

  private final LevelNodes nodes;
  private final Smoothing smoothing;
  private final double[] caughtMm;
  private final double counterMm2;
  private final Progress progress;

  private Rehearsal(
      LevelNodes nodes,
      Smoothing smoothing,
      double[] caughtMm,
      double counterMm2,
      Progress progress) {
    this.counterMm2 = counterMm2;
    this.progress = progress;
    this.nodes = nodes;
    this.smoothing = smoothing;
    this.caughtMm = caughtMm;
  }

  /**
   * How honest the estimator is about this season.
   *
   * @param rehearsed what stated variances are to be multiplied by
   * @param shareLost size of the error of the whole catch, of what those of its days come to
   *     together if they are independent, and of what the variances of single levels lose by being
   *     multiplied, as a share of it: days that are told better than stated say nothing of what
   *     they have in common
   */
  record Verdict(Rehearsed rehearsed, double shareLost) {

    /** Of a season too short to tell. */
    static final Verdict NONE = new Verdict(Rehearsed.NONE, 0);
  }

  /**
   * Rehearses a season.
   *
   * @param nodes the level without drift
   * @param smoothing how it was smoothed
   * @param caughtMm catch by link [mm]
   * @param counterMm2 what the steps of a counter add to the variance of every level [mm²]; dry
   *     time shows them, so errors hold them, and they are stated beside what comes out
   * @param progress hears of it
   */
  static Verdict of(
      LevelNodes nodes,
      Smoothing smoothing,
      double[] caughtMm,
      double counterMm2,
      Progress progress) {
    return new Rehearsal(nodes, smoothing, caughtMm, counterMm2, progress).verdict();
  }

  private Verdict verdict() {
    int[] dry = dryNodes();
    if (dry.length < FEWEST_NODES) {
      return Verdict.NONE;
    }
    LevelNodes again = nodes.at(staged(dry));
    Trial trial = new Trial(again, smoothing.of(again, progress));
    return trial.ratios(Verdict.NONE, HOUR_MS).length < FEWEST_SPANS
        ? Verdict.NONE
        : trial.verdict();
  }

  /** What makes stated variances fit errors; 1 when too few are known. */
  private static double factor(double[] ratios) {
    if (ratios.length < FEWEST_SPANS) {
      return 1;
    }
    Arrays.sort(ratios);
    double one = ratios[(int) (WITHIN_ONE * (ratios.length - 1))];
    double two = ratios[(int) (WITHIN_TWO * (ratios.length - 1))] / 2;
    double ratio = (one + two) / 2;
    return within(ratio * ratio);
  }

  private static double within(double factor) {
    return Math.min(MOST_FACTOR, Math.max(LEAST_FACTOR, factor));
  }

  private int[] dryNodes() {
    int[] dry = new int[nodes.size()];
    int count = 0;
    for (int i = 1; i + 1 < nodes.size(); i++) {
      if (smoothing.result().wet()[i - 1] < DRY && smoothing.result().wet()[i] < DRY) {
        dry[count++] = i;
      }
    }
    mirrorEveryOtherRun(dry, count);
    return Arrays.copyOf(dry, count);
  }

  /**
   * Turns every other run of dry nodes back to front. Where the level wanders up it may have passed
   * for wet, so falls are left over; turned round they are the rises that could be taken for catch.
   */
  private void mirrorEveryOtherRun(int[] dry, int count) {
    boolean mirror = false;
    int start = 0;
    for (int end = 1; end <= count; end++) {
      if (end < count && joined(dry[end - 1], dry[end])) {
        continue;
      }
      for (int i = start, j = end - 1; mirror && i < j; i++, j--) {
        int kept = dry[i];
        dry[i] = dry[j];
        dry[j] = kept;
      }
      mirror = !mirror;
      start = end;
    }
  }

  private boolean joined(int node, int other) {
    return Math.abs(node - other) == 1
        && nodes.links()[Math.min(node, other)] == LevelNodes.Link.STEP;
  }

  /**
   * The catch as found under what the level does in dry time, kept in its order: the noise, scaled,
   * and the wandering.
   */
  private double[] staged(int[] dry) {
    double[] level = new double[nodes.size()];
    double[] smooth = smoothing.result().levelMm();
    double truth = 0;
    double wander = 0;
    for (int i = 0; i < level.length; i++) {
      truth += i > 0 ? caughtMm[i - 1] : 0;
      int at = (i + dry.length / 2) % dry.length;
      int from = dry[at];
      if (at > 0 && joined(dry[at - 1], from)) {
        wander += smooth[from] - smooth[dry[at - 1]];
      }
      double noise = nodes.levelMm()[from] - smooth[from];
      double scale = Math.sqrt(smoothing.noiseMm2()[i] / smoothing.noiseMm2()[from]);
      level[i] = truth + wander + noise * scale;
    }
    return level;
  }

  /** The staged season estimated anew. */
  private final class Trial {
    private final Smoothing anew;
    private final WetSpells.Catch found;

    Trial(LevelNodes again, Smoothing anew) {
      this.anew = anew;
      this.found = WetSpells.of(again, anew);
    }

    /**
     * Days first: no level amid rain counts in most of them. Then hours, as days leave them. What
     * days have in common is stated beside their own variances and mustn't be counted in those
     * again.
     */
    Verdict verdict() {
      Verdict verdict = Verdict.NONE;
      for (int round = 0; round < ROUNDS; round++) {
        double factor = verdict.rehearsed().dryFactor() * factor(ratios(verdict, DAY_MS));
        verdict = verdict(new Rehearsed(1, within(factor)));
      }
      for (int round = 0; round < ROUNDS; round++) {
        double factor = verdict.rehearsed().withinFactor() * factor(ratios(verdict, HOUR_MS));
        verdict = verdict(new Rehearsed(within(factor), verdict.rehearsed().dryFactor()));
      }
      return verdict;
    }

    private Verdict verdict(Rehearsed rehearsed) {
      double stagedMm = Arrays.stream(caughtMm).sum();
      double lostMm = Arrays.stream(found.caughtMm()).sum() - stagedMm;
      double keptMm2 = wholeMm2(Rehearsed.NONE) - wholeMm2(rehearsed);
      double lostMm2 = lostMm * lostMm + daysMm2() + Math.max(0, keptMm2);
      return new Verdict(rehearsed, Math.sqrt(lostMm2) / stagedMm);
    }

    private double wholeMm2(Rehearsed rehearsed) {
      return series(new Verdict(rehearsed, 0))
          .varianceMm2(nodes.timeMs()[0], nodes.timeMs()[nodes.size() - 1]);
    }

    /** Sum of the squared errors of days [mm²]. */
    private double daysMm2() {
      double squares = 0;
      double error = 0;
      for (int link = 0; link < caughtMm.length; link++) {
        error += found.caughtMm()[link] - caughtMm[link];
        boolean last = link + 1 == caughtMm.length;
        if (last || nodes.timeMs()[link] / DAY_MS != nodes.timeMs()[link + 1] / DAY_MS) {
          squares += error * error;
          error = 0;
        }
      }
      return squares;
    }

    private CatchSeries series(Verdict verdict) {
      Rehearsed rehearsed = verdict.rehearsed();
      CatchSeries.Builder pieces = new CatchSeries.Builder(nodes.timeMs()[0]);
      for (int link = 0; link + 1 < nodes.size(); link++) {
        pieces.add(
            found.within()[link] ? CatchSeries.Kind.WET_STEP : CatchSeries.Kind.DRY_STEP,
            nodes.timeMs()[link + 1],
            found.caughtMm()[link],
            rehearsed.ends(link, anew.ends(link, found.levelMm2()), found).widened(counterMm2));
      }
      return pieces.build(rehearsed.dryFactor() * anew.driftMm2PerH(), verdict.shareLost());
    }

    /** Error over stated uncertainty of each span of a length in which something fell. */
    double[] ratios(Verdict verdict, long lengthMs) {
      CatchSeries series = series(verdict);
      double[] ratios = new double[nodes.size()];
      int count = 0;
      int link = 0;
      while (link + 1 < nodes.size()) {
        long span = Math.floorDiv(nodes.timeMs()[link + 1] - 1, lengthMs);
        int start = link;
        double truth = 0;
        double error = 0;
        while (link + 1 < nodes.size()
            && Math.floorDiv(nodes.timeMs()[link + 1] - 1, lengthMs) == span) {
          truth += caughtMm[link];
          error += found.caughtMm()[link] - caughtMm[link];
          link++;
        }
        if (truth > 0) {
          double variance = series.varianceMm2(nodes.timeMs()[start], nodes.timeMs()[link]);
          ratios[count++] = Math.abs(error) / Math.sqrt(Math.max(variance, 1e-12));
        }
      }
      return Arrays.copyOf(ratios, count);
    }
  }
}
