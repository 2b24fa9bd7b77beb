package org.rimebook.practice.published;

import java.util.Arrays;

/** The depths from which the pairwise comparison counts each wire's increment. Mutable. */
final class PairwiseReference {

  private static final double VALID_MM = 0.3;
  private static final double TOLERANCE_MM = 0.3;
  private static final double LIMIT_MM = 25;

  /** Far below what a wire resolves; keeps exact tenths on their side of a limit. */
  private static final double ROUNDING_MM = 1e-9;

  /** Readings in an hour: how often three may disagree in a row before they start anew. */
  private static final int PATIENCE = 12;

  private final double[] referenceMm;
  private int disagreements;

  PairwiseReference(int wires) {
    referenceMm = new double[wires];
    Arrays.fill(referenceMm, Double.NaN);
  }

  /**
   * Takes the depths of the next five minutes.
   *
   * @param depthMm depth by wire [mm]; NaN where missing
   * @return the increment they agree on [mm], negative when the level fell; zero when they agree on
   *     none
   */
  double take(double[] depthMm) {
    double[] counting = new double[depthMm.length];
    int count = 0;
    int present = 0;
    boolean tooLarge = false;
    for (int wire = 0; wire < depthMm.length; wire++) {
      if (Double.isNaN(depthMm[wire])) {
        continue;
      }
      present++;
      if (Double.isNaN(referenceMm[wire])) {
        referenceMm[wire] = depthMm[wire];
      }
      double increment = depthMm[wire] - referenceMm[wire];
      tooLarge |= increment > LIMIT_MM + ROUNDING_MM;
      if (Math.abs(increment) >= VALID_MM - ROUNDING_MM) {
        counting[count++] = increment;
      }
    }
    double agreed = tooLarge ? Double.NaN : agreed(Arrays.copyOf(counting, count), present);
    disagreements = count == 3 && Double.isNaN(agreed) ? disagreements + 1 : 0;
    if (tooLarge || !Double.isNaN(agreed) || disagreements == PATIENCE) {
      disagreements = 0;
      System.arraycopy(depthMm, 0, referenceMm, 0, depthMm.length);
    }
    return Double.isNaN(agreed) ? 0 : agreed;
  }

  /** What the increments that count agree on [mm]; NaN for nothing. */
  private static double agreed(double[] counting, int present) {
    Arrays.sort(counting);
    return switch (counting.length) {
      case 1 -> present == 1 ? counting[0] : Double.NaN;
      case 2 -> pairMm(counting[0], counting[1]);
      case 3 -> ofThree(counting);
      default -> Double.NaN;
    };
  }

  private static double ofThree(double[] ascending) {
    double lower = pairMm(ascending[0], ascending[1]);
    double upper = pairMm(ascending[1], ascending[2]);
    if (Double.isNaN(lower)) {
      return upper;
    }
    return Double.isNaN(upper) ? lower : ascending[1];
  }

  private static double pairMm(double a, double b) {
    return Math.abs(a - b) <= TOLERANCE_MM + ROUNDING_MM ? 0.5 * (a + b) : Double.NaN;
  }
}
