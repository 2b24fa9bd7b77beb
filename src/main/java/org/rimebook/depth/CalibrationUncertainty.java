package org.rimebook.depth;

/**
 * What the uncertainty of a calibration and of single frequencies does to a depth and to an
 * increment of depth. Law of propagation of uncertainty (JCGM 100:2008, 5.1.2 and 5.2.2) with ∂P/∂f
 * = S, ∂P/∂f0 = −S, ∂P/∂a = x, ∂P/∂b = x², x = f−f0. In an increment the errors of a, b and f0 are
 * shared by both ends, and largely cancel.
 *
 * @param curve the curve
 * @param uAMmPerHz standard uncertainty of a [mm/Hz]
 * @param uBMmPerHz2 standard uncertainty of b [mm/Hz²]
 * @param covarianceAb covariance of a and b [mm²/Hz³]
 * @param uF0Hz standard uncertainty of f0 [Hz], taken as independent of a and b
 */
public record CalibrationUncertainty(
    CalibrationCurve curve,
    double uAMmPerHz,
    double uBMmPerHz2,
    double covarianceAb,
    double uF0Hz) {

  /**
   * Standard uncertainty of a depth [mm].
   *
   * @param frequencyHz frequency [Hz]
   * @param uFrequencyHz its standard uncertainty [Hz]
   */
  public double depthMm(double frequencyHz, double uFrequencyHz) {
    double slope = curve.slopeMmPerHz(frequencyHz);
    double x = frequencyHz - curve.f0Hz();
    return Math.hypot(slope * uFrequencyHz, sharedMm(slope, x, x * x));
  }

  /**
   * Standard uncertainty of the increment between two frequencies [mm].
   *
   * @param fromHz first frequency [Hz]
   * @param toHz second frequency [Hz]
   * @param uFrequencyHz standard uncertainty of each, independent of the other [Hz]
   */
  public double incrementMm(double fromHz, double toHz, double uFrequencyHz) {
    double fromSlope = curve.slopeMmPerHz(fromHz);
    double toSlope = curve.slopeMmPerHz(toHz);
    double x1 = fromHz - curve.f0Hz();
    double x2 = toHz - curve.f0Hz();
    double endsMm = Math.hypot(fromSlope, toSlope) * uFrequencyHz;
    return Math.hypot(endsMm, sharedMm(toSlope - fromSlope, x2 - x1, x2 * x2 - x1 * x1));
  }

  /** Part from a, b and f0, by the sensitivities to them. */
  private double sharedMm(double slope, double x, double xSquared) {
    double f0 = slope * uF0Hz;
    double a = x * uAMmPerHz;
    double b = xSquared * uBMmPerHz2;
    // Rounding must not make a full anticorrelation negative.
    return Math.sqrt(Math.max(0, f0 * f0 + a * a + b * b + 2 * x * xSquared * covarianceAb));
  }
}
