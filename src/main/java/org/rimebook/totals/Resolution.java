package org.rimebook.totals;

import java.math.BigDecimal;
import java.util.Optional;

/** Smallest difference between two printed totals. */
public enum Resolution {
  TENTH(0.1, 1),
  HUNDREDTH(0.01, 2);

  private final double mm;
  private final int decimals;

  Resolution(double mm, int decimals) {
    this.mm = mm;
    this.decimals = decimals;
  }

  /** The resolution written as a decimal number, {@code 0.1} or {@code 0.01}. */
  public static Optional<Resolution> of(String text) {
    for (Resolution resolution : values()) {
      if (Double.toString(resolution.mm).equals(text)) {
        return Optional.of(resolution);
      }
    }
    return Optional.empty();
  }

  /** The resolution [mm]. */
  public double mm() {
    return mm;
  }

  /** Printed decimals. */
  public int decimals() {
    return decimals;
  }

  /**
   * Variance that printing adds to a total [mm²]: it is the difference of two running totals, each
   * rounded, hence off by up to half a unit (rectangular, JCGM 100:2008, 4.3.7).
   */
  double roundingVarianceMm2() {
    return mm * mm / 6;
  }

  /** A depth in whole units of the resolution, halves away from zero. */
  long units(double depthMm) {
    return Math.round(depthMm / mm);
  }

  /** Whole units as a decimal number of mm. */
  public BigDecimal toMm(long units) {
    return BigDecimal.valueOf(units, decimals);
  }
}
