package org.rimebook.depth;

import java.util.Arrays;

/** Order statistics that a few wild values don't move. */
public final class Robust {

  /**
   * Makes the median absolute deviation estimate the standard deviation of normal noise:
   * 1/Φ⁻¹(3/4). Source: Hampel 1974, J. Am. Stat. Assoc. 69, 383; Davies and Gather 1993, J. Am.
   * Stat. Assoc. 88, 782.
   */
  static final double SD_PER_MAD = 1.482602;

  private Robust() {}

  /** Median of the first {@code size} values, which are sorted in place; at least one. */
  public static double medianInPlace(double[] values, int size) {
    Arrays.sort(values, 0, size);
    int middle = size / 2;
    return size % 2 == 1 ? values[middle] : 0.5 * (values[middle - 1] + values[middle]);
  }

  /** Robust standard deviation about the median; the first {@code size} values are overwritten. */
  public static double sdInPlace(double[] values, int size) {
    double median = medianInPlace(values, size);
    for (int i = 0; i < size; i++) {
      values[i] = Math.abs(values[i] - median);
    }
    return SD_PER_MAD * medianInPlace(values, size);
  }

  /**
   * Standard deviation of a symmetric sample about zero: from the median of its magnitudes, or,
   * when more than half are zero as with coarsely quantised readings, from their 90th percentile
   * (1.645 standard deviations of normal noise).
   *
   * @param magnitudes |x|; the first {@code size} are sorted in place
   * @param size how many, at least 1
   */
  public static double sdFromMagnitudesInPlace(double[] magnitudes, int size) {
    double median = medianInPlace(magnitudes, size);
    return median > 0 ? SD_PER_MAD * median : magnitudes[(int) (size * 0.9)] / 1.644854;
  }
}
