package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.Optional;
import org.rimebook.depth.Robust;

/**
 * How noisy the level is around each node, from the departures of nodes from the straight line
 * between their neighbours: blind to any steady rate, and robust to the few nodes where it changes.
 * Where noise has heavy tails a few nodes are far worse than the others: one that stands off both
 * its neighbours is judged by how far it does.
 *
 * <p>Limits are our own choice.
 */
final class NodeNoise {

  /** No reading is believed better than this [mm]. */
  private static final double LEAST_SD_MM = 0.002;

  /** A node that stands off further than so many of its standard deviations counts for less. */
  private static final double MOST_SD = 2.5;

  private static final double BLOCK_H = 1;
  private static final int BLOCK_NODES = 12;
  private static final int FEWEST = 10;

  private final LevelNodes nodes;
  private final double[] relative;
  private final double[] departure;

  private NodeNoise(LevelNodes nodes, double[] relative, double[] departure) {
    this.nodes = nodes;
    this.relative = relative;
    this.departure = departure;
  }

  /**
   * What is known of the noise.
   *
   * @param varianceMm2 variance of each node's level [mm²]
   * @param byWind how noise grows with the wind; empty when no wind is known
   */
  record Judged(double[] varianceMm2, Optional<NoiseByWind> byWind) {}

  /**
   * Judges the noise of each node.
   *
   * @param nodes the level
   * @param windMs wind at each node [m/s]; empty when none is known
   */
  static Judged judge(LevelNodes nodes, Optional<double[]> windMs) {
    Optional<NoiseByWind> law =
        windMs.map(wind -> NoiseByWind.of(departures(nodes), wind, LEAST_SD_MM));
    return new Judged(varianceMm2(nodes, windMs, law), law);
  }

  /**
   * Variance of each node's level [mm²].
   *
   * @param nodes the level
   * @param windMs wind at each node [m/s]; empty when none is known
   * @param law how noise grows with the wind; empty when no wind is known
   */
  static double[] varianceMm2(
      LevelNodes nodes, Optional<double[]> windMs, Optional<NoiseByWind> law) {
    double[] departure = departures(nodes);
    double[] relative = new double[nodes.size()];
    Arrays.fill(relative, 1);
    if (windMs.isPresent() && law.isPresent()) {
      double[] wind = windMs.get();
      Arrays.setAll(relative, i -> law.get().at(wind[i]));
      for (int i = 1; i + 1 < relative.length; i++) {
        if (!Double.isNaN(departure[i])) {
          departure[i] /= rootMeanSquare(nodes, relative, i);
        }
      }
    }
    return new NodeNoise(nodes, relative, departure).varianceMm2();
  }

  /** Departure of each node from its neighbours' line, scaled to the sd of one node; else NaN. */
  private static double[] departures(LevelNodes nodes) {
    double[] departure = new double[nodes.size()];
    Arrays.fill(departure, Double.NaN);
    for (int i = 1; i + 1 < nodes.size(); i++) {
      if (nodes.links()[i - 1] != LevelNodes.Link.STEP
          || nodes.links()[i] != LevelNodes.Link.STEP) {
        continue;
      }
      double before = nodes.hours(i - 1);
      double after = nodes.hours(i);
      double w = after / (before + after);
      double line = w * nodes.levelMm()[i - 1] + (1 - w) * nodes.levelMm()[i + 1];
      departure[i] = Math.abs(nodes.levelMm()[i] - line) / Math.sqrt(1 + w * w + (1 - w) * (1 - w));
    }
    return departure;
  }

  /** Noise of a departure over that of a node, when each of the three nodes has its own. */
  private static double rootMeanSquare(LevelNodes nodes, double[] relative, int i) {
    double w = nodes.hours(i) / (nodes.hours(i - 1) + nodes.hours(i));
    double before = w * relative[i - 1];
    double after = (1 - w) * relative[i + 1];
    double square = before * before + relative[i] * relative[i] + after * after;
    return Math.sqrt(square / (1 + w * w + (1 - w) * (1 - w)));
  }

  private double[] varianceMm2() {
    int n = nodes.size();
    double[] variance = new double[n];
    double season = sdOver(0, n, LEAST_SD_MM);
    long blockMs = blockMs();
    int from = 0;
    int to = 0;
    int start = 0;
    while (start < n) {
      long block = nodes.timeMs()[start] / blockMs;
      int end = start;
      while (end < n && nodes.timeMs()[end] / blockMs == block) {
        end++;
      }
      while (nodes.timeMs()[from] < (block - 2) * blockMs) {
        from++;
      }
      while (to < n && nodes.timeMs()[to] < (block + 3) * blockMs) {
        to++;
      }
      double sd = sdOver(from, to, season);
      for (int i = start; i < end; i++) {
        double own = Math.max(LEAST_SD_MM, sd * relative[i]);
        own *= Math.max(1, standsOffMm(i) / (MOST_SD * own));
        variance[i] = own * own;
      }
      start = end;
    }
    return variance;
  }

  /** How far a node lies beyond both its neighbours [mm]: never in a level that only rises. */
  private double standsOffMm(int i) {
    boolean between =
        i > 0
            && i + 1 < nodes.size()
            && nodes.links()[i - 1] == LevelNodes.Link.STEP
            && nodes.links()[i] == LevelNodes.Link.STEP;
    if (!between) {
      return 0;
    }
    double before = nodes.levelMm()[i - 1];
    double after = nodes.levelMm()[i + 1];
    double above = nodes.levelMm()[i] - Math.max(before, after);
    double below = Math.min(before, after) - nodes.levelMm()[i];
    return Math.max(0, Math.max(above, below));
  }

  private long blockMs() {
    double[] steps = new double[Math.max(1, nodes.size() - 1)];
    int count = 0;
    for (int i = 0; i + 1 < nodes.size(); i++) {
      if (nodes.links()[i] == LevelNodes.Link.STEP) {
        steps[count++] = nodes.hours(i);
      }
    }
    double step = count == 0 ? BLOCK_H : Robust.medianInPlace(steps, count);
    return Math.round(3_600_000 * Math.max(BLOCK_H, BLOCK_NODES * step));
  }

  private double sdOver(int from, int to, double fallback) {
    double[] magnitudes = new double[to - from];
    int count = 0;
    for (int i = from; i < to; i++) {
      if (!Double.isNaN(departure[i])) {
        magnitudes[count++] = departure[i];
      }
    }
    return count < FEWEST ? fallback : Robust.sdFromMagnitudesInPlace(magnitudes, count);
  }
}
