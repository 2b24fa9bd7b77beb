package org.rimebook.practice;

/**
 * How often the truth lies within the stated uncertainty, over the hours or days in which anything
 * fell. For an honest standard uncertainty and normal errors: 68 % and 95 %.
 *
 * @param wet hours or days in which anything fell
 * @param within1u how many of them have an error of at most one standard uncertainty
 * @param within2u how many of them have an error of at most two
 */
public record Coverage(int wet, int within1u, int within2u) {

  /**
   * Counts them.
   *
   * @param truthMm what fell [mm]
   * @param estimateMm what is said of it [mm]
   * @param uMm standard uncertainty stated [mm]
   * @throws IllegalArgumentException when the three aren't equally long
   */
  static Coverage of(double[] truthMm, double[] estimateMm, double[] uMm) {
    Amounts.requireSameLength(truthMm, estimateMm);
    Amounts.requireSameLength(truthMm, uMm);
    int wet = 0;
    int within1u = 0;
    int within2u = 0;
    for (int i = 0; i < truthMm.length; i++) {
      if (truthMm[i] > 0) {
        double error = Math.abs(estimateMm[i] - truthMm[i]);
        wet++;
        within1u += error <= uMm[i] ? 1 : 0;
        within2u += error <= 2 * uMm[i] ? 1 : 0;
      }
    }
    return new Coverage(wet, within1u, within2u);
  }

  /** Share within one standard uncertainty [%]; NaN when nothing fell. */
  public double within1uPct() {
    return 100.0 * within1u / wet;
  }

  /** Share within two standard uncertainties [%]; NaN when nothing fell. */
  public double within2uPct() {
    return 100.0 * within2u / wet;
  }

  /** The two counted together, so that shares can be taken over several seasons. */
  public Coverage plus(Coverage other) {
    return new Coverage(wet + other.wet, within1u + other.within1u, within2u + other.within2u);
  }
}
