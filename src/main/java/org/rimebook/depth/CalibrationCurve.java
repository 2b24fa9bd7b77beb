package org.rimebook.depth;

import org.rimebook.station.Calibration;

/**
 * The curve of one calibration in millimetres: P = a(f−f0) + b(f−f0)², the rising branch that holds
 * f0. An ideal taut string, f = (1/2L)√(T/μ), has P = b(f²−f0²) and so a = 2 f0 b.
 *
 * @param aMmPerHz a [mm/Hz]
 * @param bMmPerHz2 b [mm/Hz²]; zero gives a straight line
 * @param f0Hz frequency under the empty bucket [Hz]
 */
public record CalibrationCurve(double aMmPerHz, double bMmPerHz2, double f0Hz) {

  private static final double MM_PER_CM = 10;

  /** The curve of a calibration, which is in centimetres. */
  public static CalibrationCurve of(Calibration calibration) {
    return new CalibrationCurve(
        MM_PER_CM * calibration.aCmPerHz(),
        MM_PER_CM * calibration.bCmPerHz2(),
        calibration.f0Hz());
  }

  /** Depth [mm] at a frequency [Hz]; NaN gives NaN. */
  public double depthMm(double frequencyHz) {
    double x = frequencyHz - f0Hz;
    return x * (aMmPerHz + bMmPerHz2 * x);
  }

  /** Slope dP/df [mm/Hz] at a frequency [Hz]. */
  public double slopeMmPerHz(double frequencyHz) {
    return aMmPerHz + 2 * bMmPerHz2 * (frequencyHz - f0Hz);
  }

  /** Whether the rising branch comes to a depth [mm]. */
  public boolean reaches(double depthMm) {
    return aMmPerHz > 0 && discriminant(depthMm) > 0;
  }

  /**
   * Frequency [Hz] on the rising branch at a depth [mm].
   *
   * @throws IllegalArgumentException when the branch doesn't {@link #reaches reach} the depth
   */
  public double frequencyHz(double depthMm) {
    if (!reaches(depthMm)) {
      throw new IllegalArgumentException("the calibration doesn't reach " + depthMm + " mm");
    }
    // The root written so that nothing cancels and b = 0 needs no case of its own.
    return f0Hz + 2 * depthMm / (aMmPerHz + Math.sqrt(discriminant(depthMm)));
  }

  /** a/(2 f0 b): 1 for an ideal taut string, infinite for a straight line. */
  public double stringRatio() {
    return aMmPerHz / (2 * f0Hz * bMmPerHz2);
  }

  /** Frequency [Hz] where a bent curve turns back; infinite for a straight line. */
  double turningHz() {
    return bMmPerHz2 == 0 ? Double.NEGATIVE_INFINITY : f0Hz - aMmPerHz / (2 * bMmPerHz2);
  }

  private double discriminant(double depthMm) {
    return aMmPerHz * aMmPerHz + 4 * bMmPerHz2 * depthMm;
  }
}
