package org.rimebook.practice.published;

import java.util.Arrays;

/** Depths of the wires of one gauge, by time. Immutable. */
public final class WireLevels {

  private final long[] stampMs;
  private final double[][] depthMm;

  /**
   * Takes copies.
   *
   * @param stampMs stamps, each closing its interval, strictly increasing, evenly spaced or not [ms
   *     since 1970-01-01T00:00Z]
   * @param depthMm depth by wire and row [mm]; NaN where there is no reading
   * @throws IllegalArgumentException when there is no wire, a wire has another number of rows than
   *     there are stamps, or the stamps don't increase
   */
  public WireLevels(long[] stampMs, double[][] depthMm) {
    if (depthMm.length == 0) {
      throw new IllegalArgumentException("no wires");
    }
    for (int row = 1; row < stampMs.length; row++) {
      if (stampMs[row] <= stampMs[row - 1]) {
        throw new IllegalArgumentException(
            "the stamp of row " + row + " isn't after the one before");
      }
    }
    this.stampMs = stampMs.clone();
    this.depthMm = new double[depthMm.length][];
    for (int wire = 0; wire < depthMm.length; wire++) {
      if (depthMm[wire].length != stampMs.length) {
        throw new IllegalArgumentException(
            "wire " + wire + " has " + depthMm[wire].length + " rows, not " + stampMs.length);
      }
      this.depthMm[wire] = depthMm[wire].clone();
    }
  }

  /** Number of rows. */
  int size() {
    return stampMs.length;
  }

  /** Number of wires. */
  int wires() {
    return depthMm.length;
  }

  long stampMs(int row) {
    return stampMs[row];
  }

  /** Depth [mm]; NaN where there is no reading. */
  double depthMm(int wire, int row) {
    return depthMm[wire][row];
  }

  boolean has(int wire, int row) {
    return !Double.isNaN(depthMm[wire][row]);
  }

  /** The first row stamped at an instant or after it; the number of rows when none is. */
  int firstRowFrom(long instantMs) {
    int at = Arrays.binarySearch(stampMs, instantMs);
    return at >= 0 ? at : -at - 1;
  }
}
