package org.rimebook.practice.published;

import java.util.Arrays;

/**
 * The mean of the wires as one level without steps where a wire is lost or back: a wire that is
 * missing is taken to keep the distance it had from the mean of all. The methods speak of the mean
 * of three wires and say nothing of a missing one; this choice is ours.
 */
final class WireMean {

  /** Weight of the latest complete row in a wire's distance from the mean: about 30 rows count. */
  private static final double LATEST = 1.0 / 32;

  private final WireLevels levels;
  private final double[] departureMm;
  private boolean complete;

  private WireMean(WireLevels levels) {
    this.levels = levels;
    this.departureMm = new double[levels.wires()];
  }

  /** One wire that holds the mean, in the rows in which any wire has a reading. */
  static WireLevels of(WireLevels levels) {
    return new WireMean(levels).mean();
  }

  private WireLevels mean() {
    long[] stampMs = new long[levels.size()];
    double[] meanMm = new double[levels.size()];
    int size = 0;
    for (int row = 0; row < levels.size(); row++) {
      double mean = mean(row);
      if (!Double.isNaN(mean)) {
        stampMs[size] = levels.stampMs(row);
        meanMm[size] = mean;
        size++;
      }
    }
    return new WireLevels(
        Arrays.copyOf(stampMs, size), new double[][] {Arrays.copyOf(meanMm, size)});
  }

  private double mean(int row) {
    double sum = 0;
    int present = 0;
    for (int wire = 0; wire < levels.wires(); wire++) {
      if (levels.has(wire, row)) {
        sum += levels.depthMm(wire, row) - departureMm[wire];
        present++;
      }
    }
    if (present < levels.wires()) {
      return present == 0 ? Double.NaN : sum / present;
    }
    double mean = sum / present;
    double weight = complete ? LATEST : 1;
    for (int wire = 0; wire < levels.wires(); wire++) {
      departureMm[wire] += weight * (levels.depthMm(wire, row) - mean - departureMm[wire]);
    }
    complete = true;
    return mean;
  }
}
