package org.rimebook.accumulation;

import org.rimebook.depth.Robust;

/**
 * How much slower noise averages out than if each node's were independent, as wind makes it: the
 * variance of quarter-hour means in dry time over what independent noise would leave.
 *
 * <p>Limits are our own choice.
 */
final class NoiseCorrelation {

  private static final long BLOCK_MS = 900_000;
  private static final long HOUR_MS = 3_600_000;
  private static final double MOST = 30;
  private static final int FEWEST_NODES = 3;
  private static final int FEWEST_BLOCKS = 30;
  private static final double DRY = 0.05;

  private NoiseCorrelation() {}

  /**
   * The factor by which to raise the variance of every node, from 1.
   *
   * @param nodes the level
   * @param varianceMm2 variance of each node on its own [mm²]
   * @param wet probability of each link to be wet
   */
  static double factor(LevelNodes nodes, double[] varianceMm2, double[] wet) {
    DryDrift.BlockMeans means = DryDrift.BlockMeans.of(nodes, varianceMm2, BLOCK_MS);
    double[] departures = new double[Math.max(1, means.size())];
    int count = 0;
    for (int k = 1; k + 1 < means.size(); k++) {
      boolean joined =
          means.run()[k + 1] == means.run()[k - 1]
              && means.index()[k + 1] - means.index()[k - 1] == 2
              && Math.min(means.nodes()[k - 1], means.nodes()[k + 1]) >= FEWEST_NODES
              && means.nodes()[k] >= FEWEST_NODES;
      if (joined && dry(means, k, wet)) {
        double bend = means.levelMm()[k] - 0.5 * (means.levelMm()[k - 1] + means.levelMm()[k + 1]);
        double variance =
            means.varianceMm2()[k]
                + 0.25 * (means.varianceMm2()[k - 1] + means.varianceMm2()[k + 1]);
        departures[count++] = Math.abs(bend) / Math.sqrt(variance);
      }
    }
    if (count < FEWEST_BLOCKS) {
      return 1;
    }
    double sd = Robust.sdFromMagnitudesInPlace(departures, count);
    return Math.min(MOST, Math.max(1, sd * sd));
  }

  /**
   * The whole variance of a node's noise over the part its neighbours don't share, from 1: how far
   * nodes of a dry hour lie from its mean.
   *
   * @param nodes the level
   * @param varianceMm2 variance of each node on its own [mm²]
   * @param wet probability of each link to be wet
   */
  static double whole(LevelNodes nodes, double[] varianceMm2, double[] wet) {
    DryDrift.BlockMeans means = DryDrift.BlockMeans.of(nodes, varianceMm2, HOUR_MS);
    double[] departures = new double[Math.max(1, nodes.size())];
    int count = 0;
    for (int k = 1; k + 1 < means.size(); k++) {
      int size = means.nodes()[k];
      if (size < FEWEST_NODES || !dry(means, k, wet)) {
        continue;
      }
      for (int i = means.firstNode()[k]; i < means.firstNode()[k] + size; i++) {
        double variance = varianceMm2[i] * (1 - 1.0 / size);
        departures[count++] =
            Math.abs(nodes.levelMm()[i] - means.levelMm()[k]) / Math.sqrt(variance);
      }
    }
    if (count < FEWEST_BLOCKS) {
      return 1;
    }
    double sd = Robust.sdFromMagnitudesInPlace(departures, count);
    return Math.min(MOST, Math.max(1, sd * sd));
  }

  private static boolean dry(DryDrift.BlockMeans means, int k, double[] wet) {
    int end = means.firstNode()[k + 1] + means.nodes()[k + 1];
    for (int link = means.firstNode()[k - 1]; link + 1 < end; link++) {
      if (wet[link] > DRY) {
        return false;
      }
    }
    return true;
  }
}
