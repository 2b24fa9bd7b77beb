package org.rimebook.depth;

import java.util.Arrays;

/**
 * A calibration fitted to check weights: P = a(f−f0) + b(f−f0)² by least squares, with f0 as read
 * under the empty bucket.
 *
 * @param curve the fitted curve
 * @param uAMmPerHz standard uncertainty of a [mm/Hz]
 * @param uBMmPerHz2 standard uncertainty of b [mm/Hz²]
 * @param covarianceAb covariance of a and b [mm²/Hz³]
 * @param residualSdMm residual standard deviation [mm]
 */
public record CalibrationFit(
    CalibrationCurve curve,
    double uAMmPerHz,
    double uBMmPerHz2,
    double covarianceAb,
    double residualSdMm) {

  /**
   * Fits a calibration.
   *
   * @param frequenciesHz frequency under each weight [Hz]
   * @param depthsMm depth of water each weight stands for [mm]
   * @param f0Hz frequency under the empty bucket [Hz]
   * @throws IllegalArgumentException with fewer than three weights, or weights too alike to tell a
   *     from b
   */
  public static CalibrationFit of(double[] frequenciesHz, double[] depthsMm, double f0Hz) {
    double[] x = Arrays.stream(frequenciesHz).map(f -> f - f0Hz).toArray();
    PolynomialFit fit = PolynomialFit.of(x, depthsMm, 1, 2);
    return new CalibrationFit(
        new CalibrationCurve(fit.coefficient(1), fit.coefficient(2), f0Hz),
        fit.uncertainty(1),
        fit.uncertainty(2),
        fit.covariance(1, 2),
        fit.residualSd());
  }

  /**
   * Uncertainty of depths on this calibration.
   *
   * @param uF0Hz standard uncertainty of f0 [Hz]
   */
  public CalibrationUncertainty uncertainty(double uF0Hz) {
    return new CalibrationUncertainty(curve, uAMmPerHz, uBMmPerHz2, covarianceAb, uF0Hz);
  }
}
