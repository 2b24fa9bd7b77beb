package org.rimebook.accumulation;

import org.rimebook.depth.Robust;

/**
 * How much of the load a wire takes beyond its share, since the bucket hangs askew or the wire's
 * sheet is a little off: the slope of its departure from the mean of all against the level, learnt
 * where the level rises. Without it a departure that comes with the catch would pass for one that
 * comes with the sun, and every spell be off by the same share.
 *
 * <p>Least squares through the origin with a small penalty and Huber's weights. Limits are our own
 * choice.
 */
final class LoadTilt {

  private static final long LAG_MS = 3 * 3_600_000;

  /** A rise over the lag by which the load tells [mm]. */
  private static final double RISE_MM = 1;

  /** Standard deviation the slope is expected to have beforehand [mm/mm]. */
  private static final double EXPECTED = 0.01;

  private static final int FEWEST = 10;
  private static final int ROUNDS = 4;
  private static final double HUBER = 1.5;

  private LoadTilt() {}

  /**
   * The slope [mm/mm]; 0 where too little rose to tell.
   *
   * @param nodes the times, and between which of them levels compare
   * @param levelMm the level at each, smoothed over an hour
   * @param departureMm the departure at each, smoothed alike
   */
  static double of(LevelNodes nodes, double[] levelMm, double[] departureMm) {
    double[] rise = new double[levelMm.length];
    double[] moved = new double[levelMm.length];
    int count = 0;
    int before = 0;
    int start = 0;
    for (int i = 0; i < levelMm.length; i++) {
      if (i > 0 && nodes.links()[i - 1] == LevelNodes.Link.BREAK) {
        start = i;
      }
      before = Math.max(before, start);
      while (before < i && nodes.timeMs()[before + 1] <= nodes.timeMs()[i] - LAG_MS) {
        before++;
      }
      boolean whole = nodes.timeMs()[before] <= nodes.timeMs()[i] - LAG_MS;
      if (whole && levelMm[i] - levelMm[before] >= RISE_MM) {
        rise[count] = levelMm[i] - levelMm[before];
        moved[count] = departureMm[i] - departureMm[before];
        count++;
      }
    }
    return count < FEWEST ? 0 : slope(rise, moved, count, overlap(nodes));
  }

  /** Nodes within the lag, which tell nearly the same. */
  private static double overlap(LevelNodes nodes) {
    int last = nodes.size() - 1;
    double spanMs = nodes.timeMs()[last] - nodes.timeMs()[0];
    return Math.max(1, LAG_MS * last / Math.max(1, spanMs));
  }

  private static double slope(double[] rise, double[] moved, int count, double overlap) {
    double slope = 0;
    double[] magnitudes = new double[count];
    for (int round = 0; round < ROUNDS; round++) {
      for (int s = 0; s < count; s++) {
        magnitudes[s] = Math.abs(moved[s] - slope * rise[s]);
      }
      double scale = Math.max(1e-4, Robust.sdFromMagnitudesInPlace(magnitudes, count));
      double both = 0;
      double square = overlap * scale * scale / (EXPECTED * EXPECTED);
      for (int s = 0; s < count; s++) {
        double residual = Math.abs(moved[s] - slope * rise[s]);
        double weight = Math.min(1, HUBER * scale / Math.max(residual, 1e-12));
        both += weight * rise[s] * moved[s];
        square += weight * rise[s] * rise[s];
      }
      slope = both / square;
    }
    return slope;
  }
}
