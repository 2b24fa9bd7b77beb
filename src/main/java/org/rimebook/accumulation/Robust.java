package org.rimebook.accumulation;

import java.util.Arrays;

/** Order statistics that a few wild values don't move. */
final class Robust {

  /** Makes the median of |x| estimate the standard deviation of a normal x. */
  static final double MAD_TO_SD = 1.482602;

  private Robust() {}

  /**
   * Standard deviation of a symmetric sample about zero: from the median of its magnitudes, or,
   * when more than half are zero as with coarsely quantised readings, from their 90th percentile.
   *
   * @param magnitudes |x|; reordered
   * @param count how many, at least 1
   */
  static double sdFromMagnitudes(double[] magnitudes, int count) {
    Arrays.sort(magnitudes, 0, count);
    double median = magnitudes[count / 2];
    return median > 0 ? MAD_TO_SD * median : magnitudes[(int) (count * 0.9)] / 1.644854;
  }

  /** The median; the values are reordered. */
  static double median(double[] values, int count) {
    Arrays.sort(values, 0, count);
    return count % 2 == 1 ? values[count / 2] : 0.5 * (values[count / 2 - 1] + values[count / 2]);
  }
}
