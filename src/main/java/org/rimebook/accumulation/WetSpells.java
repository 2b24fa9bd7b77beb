package org.rimebook.accumulation;

import java.util.Arrays;

/**
 * Takes the smoother's expected rises to catch: nothing outside wet spells, and inside a rise that
 * never turns back, with the same total.
 */
final class WetSpells {

  /** A spell holds at least one step at least this likely to be wet. */
  private static final double SURE = 0.2;

  /** A spell reaches as far as steps are at least this likely to be wet. */
  private static final double POSSIBLE = 0.01;

  /** Weight that pins the ends of a spell. */
  private static final double PINNED = 1e9;

  private WetSpells() {}

  /** Catch of each step [mm], zero outside spells and for links that aren't steps. */
  static double[] catchMm(LevelNodes nodes, SwitchingSmoother.Result smoothed) {
    int links = Math.max(0, nodes.size() - 1);
    double[] caught = new double[links];
    int link = 0;
    while (link < links) {
      int end = link;
      boolean sure = false;
      while (end < links
          && nodes.links()[end] == LevelNodes.Link.STEP
          && smoothed.wet()[end] >= POSSIBLE) {
        sure |= smoothed.wet()[end] >= SURE;
        end++;
      }
      if (sure) {
        rising(smoothed.catchMm(), link, end, caught);
      }
      link = Math.max(end, link + 1);
    }
    return caught;
  }

  private static void rising(double[] expected, int from, int to, double[] caught) {
    double[] sum = new double[to - from + 1];
    double[] weight = new double[sum.length];
    Arrays.fill(weight, 1);
    weight[0] = PINNED;
    weight[sum.length - 1] = PINNED;
    for (int i = from; i < to; i++) {
      sum[i - from + 1] = sum[i - from] + expected[i];
    }
    if (sum[sum.length - 1] <= 0) {
      return;
    }
    double[] fitted = Isotonic.fit(sum, weight);
    for (int i = from; i < to; i++) {
      caught[i] = fitted[i - from + 1] - fitted[i - from];
    }
  }
}
