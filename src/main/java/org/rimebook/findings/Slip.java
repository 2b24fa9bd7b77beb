package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.station.Interval;

/**
 * A standstill that ends with a step up.
 *
 * @param span from when it stood still until it had caught up
 * @param stepMm the step [mm]
 */
record Slip(Interval span, double stepMm) {

  /** Those that lie near each other together, in the order of time. */
  static List<List<Slip>> groups(List<Slip> slips, long nearMs) {
    List<List<Slip>> groups = new ArrayList<>();
    long lastMs = Long.MIN_VALUE;
    for (Slip slip : slips) {
      if (groups.isEmpty() || slip.span().fromMs() - lastMs > nearMs) {
        groups.add(new ArrayList<>());
      }
      groups.get(groups.size() - 1).add(slip);
      lastMs = slip.span().toMs();
    }
    return groups;
  }

  /** From the first to the last; at least one. */
  static Interval span(List<Slip> slips) {
    return new Interval(slips.get(0).span().fromMs(), slips.get(slips.size() - 1).span().toMs());
  }

  static double leastMm(List<Slip> slips) {
    return slips.stream().mapToDouble(Slip::stepMm).min().orElse(0);
  }

  static double mostMm(List<Slip> slips) {
    return slips.stream().mapToDouble(Slip::stepMm).max().orElse(0);
  }
}
