package org.rimebook.practice.bench;

/**
 * How often the truth lies within the stated uncertainty, over the spans in which anything fell.
 * For an honest standard uncertainty and normal errors: 68 % and 95 %.
 *
 * @param wet spans in which anything fell
 * @param within1u how many of them have an error of at most one standard uncertainty
 * @param within2u how many of them have an error of at most two
 */
public record Coverage(int wet, int within1u, int within2u) {

  static final Coverage NONE = new Coverage(0, 0, 0);

  /**
   * Counts them.
   *
   * @param pairs what fell and what is said of it
   * @param uMm standard uncertainty stated for each span [mm]
   * @throws IllegalArgumentException when there isn't one for each
   */
  static Coverage of(Pairs pairs, double[] uMm) {
    if (uMm.length != pairs.size()) {
      throw new IllegalArgumentException(uMm.length + " uncertainties for " + pairs.size());
    }
    Coverage coverage = NONE;
    for (int span = 0; span < uMm.length; span++) {
      if (pairs.wet(span)) {
        coverage = coverage.plus(ofOne(pairs.errorMm(span), uMm[span]));
      }
    }
    return coverage;
  }

  /** Counts one span in which something fell. */
  static Coverage ofOne(double errorMm, double uMm) {
    double error = Math.abs(errorMm);
    return new Coverage(1, error <= uMm ? 1 : 0, error <= 2 * uMm ? 1 : 0);
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
