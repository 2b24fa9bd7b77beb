package org.rimebook.accumulation;

/**
 * Where the air is moist since something falls or fell a short while ago: there less evaporates
 * than on dry days. An hour to either side is our own choice.
 */
final class MoistAir {

  private static final long ABOUT_MS = 3_600_000;

  private MoistAir() {}

  /**
   * Probability by link that it is wet then or within an hour.
   *
   * @param nodes the nodes
   * @param wet probability of each link to be wet
   */
  static double[] of(LevelNodes nodes, double[] wet) {
    int links = nodes.size() - 1;
    double[] moist = wet.clone();
    // Links that may yet be the likeliest of a window, likeliest first.
    int[] candidates = new int[links];
    int first = 0;
    int end = 0;
    int ahead = 0;
    for (int link = 0; link < links; link++) {
      long fromMs = nodes.timeMs()[link] - ABOUT_MS;
      long toMs = nodes.timeMs()[link + 1] + ABOUT_MS;
      while (ahead < links && nodes.timeMs()[ahead] < toMs) {
        while (end > first && wet[candidates[end - 1]] <= wet[ahead]) {
          end--;
        }
        candidates[end++] = ahead++;
      }
      while (nodes.timeMs()[candidates[first] + 1] <= fromMs) {
        first++;
      }
      moist[link] = wet[candidates[first]];
    }
    return moist;
  }
}
