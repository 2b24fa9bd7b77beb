package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.station.Calibration;

/**
 * Calibrations against the law of the taut string, f = (1/2L)√(T/μ) (Mersenne 1636): f² is linear
 * in the load, so P = b(f²−f0²) and a = 2 f0 b.
 */
class CalibrationReferenceTest {

  private static final double GRAVITY_M_PER_S2 = 9.80665;

  /** Frequency of a steel wire under a bucket [kg] and water of a depth on 200 cm² [mm]. */
  private static double stringHz(double bucketKg, double depthMm) {
    double lengthM = 0.05;
    double massKgPerM = 1.4e-4;
    // 1 mm on 200 cm² is 20 cm³ of water, 20 g.
    double loadKg = bucketKg + 0.020 * depthMm;
    return Math.sqrt(loadKg * GRAVITY_M_PER_S2 / massKgPerM) / (2 * lengthM);
  }

  /** Worked by hand both ways: 0.17·1450 + (0.17/2100)·1450² and (0.17/2100)(2500² − 1050²). */
  @Test
  void theDepthOfAnIdealWireAgreesWithTheWorkedValue() {
    Calibration calibration = new Calibration(Optional.empty(), 0.017, 0.017 / 2100, 1050);
    CalibrationCurve curve = CalibrationCurve.of(calibration);
    assertThat(curve.depthMm(2500)).isCloseTo(416.702381, within(5e-7));
    assertThat(0.17 / 2100 * (2500.0 * 2500 - 1050.0 * 1050)).isCloseTo(416.702381, within(5e-7));
    assertThat(curve.stringRatio()).isCloseTo(1, within(1e-12));
  }

  @Test
  void aTautStringFitsTheCurveWithARatioOfOne() {
    double[] depths = {0, 50, 100, 200, 300, 400, 500, 600};
    double[] frequencies = Arrays.stream(depths).map(d -> stringHz(2.3, d)).toArray();
    CalibrationFit fit = CalibrationFit.of(frequencies, depths, stringHz(2.3, 0));
    CalibrationCurve curve = fit.curve();
    assertThat(curve.aMmPerHz() / curve.bMmPerHz2())
        .isCloseTo(2 * stringHz(2.3, 0), withinPercentage(1e-7));
    assertThat(curve.stringRatio()).isCloseTo(1, within(1e-9));
    assertThat(fit.residualSdMm()).isLessThan(1e-9);
    assertThat(curve.depthMm(stringHz(2.3, 437))).isCloseTo(437, within(1e-8));
  }

  /** For an ideal wire S = a f/f0: noise in millimetres grows with the load. */
  @Test
  void theSlopeOfAnIdealWireIsProportionalToItsFrequency() {
    CalibrationCurve curve = new CalibrationCurve(0.17, 0.17 / 2100, 1050);
    assertThat(curve.slopeMmPerHz(2100)).isCloseTo(0.34, within(1e-12));
    assertThat(curve.slopeMmPerHz(1050)).isCloseTo(0.17, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-10, 0, 0.1, 300, 660})
  void theFrequencyOfADepthIsTheInverse(double depthMm) {
    CalibrationCurve bent = new CalibrationCurve(0.17, 0.17 / 2100, 1050);
    CalibrationCurve straight = new CalibrationCurve(0.3, 0, 1050);
    CalibrationCurve falling = new CalibrationCurve(0.3, -1e-5, 1050);
    assertThat(bent.depthMm(bent.frequencyHz(depthMm))).isCloseTo(depthMm, within(1e-9));
    assertThat(straight.depthMm(straight.frequencyHz(depthMm))).isCloseTo(depthMm, within(1e-9));
    assertThat(falling.depthMm(falling.frequencyHz(depthMm))).isCloseTo(depthMm, within(1e-9));
  }

  @Test
  void aDepthTheCurveNeverComesToHasNoFrequency() {
    CalibrationCurve curve = new CalibrationCurve(0.17, 0.17 / 2100, 1050);
    assertThat(curve.reaches(-100)).isFalse();
    assertThatThrownBy(() -> curve.frequencyHz(-100))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-100");
  }
}
