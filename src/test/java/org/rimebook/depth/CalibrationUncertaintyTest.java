package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class CalibrationUncertaintyTest {

  private static final CalibrationCurve CURVE = new CalibrationCurve(0.17, 0.17 / 2100, 1050);

  @Test
  void aDepthTakesItsPartsInSquares() {
    // f = 2100 Hz: S = 0.34 mm/Hz, x = 1050 Hz.
    CalibrationUncertainty onlyF = new CalibrationUncertainty(CURVE, 0, 0, 0, 0);
    assertThat(onlyF.depthMm(2100, 0.1)).isCloseTo(0.034, within(1e-12));
    CalibrationUncertainty onlyF0 = new CalibrationUncertainty(CURVE, 0, 0, 0, 0.2);
    assertThat(onlyF0.depthMm(2100, 0)).isCloseTo(0.068, within(1e-12));
    CalibrationUncertainty onlyA = new CalibrationUncertainty(CURVE, 1e-4, 0, 0, 0);
    assertThat(onlyA.depthMm(2100, 0)).isCloseTo(0.105, within(1e-12));
    CalibrationUncertainty onlyB = new CalibrationUncertainty(CURVE, 0, 1e-7, 0, 0);
    assertThat(onlyB.depthMm(2100, 0)).isCloseTo(0.11025, within(1e-12));
    CalibrationUncertainty all = new CalibrationUncertainty(CURVE, 1e-4, 1e-7, -0.5e-11, 0.2);
    double parts = 0.034 * 0.034 + 0.068 * 0.068 + 0.105 * 0.105 + 0.11025 * 0.11025;
    double crossed = 2 * 1050.0 * 1050 * 1050 * -0.5e-11;
    assertThat(all.depthMm(2100, 0.1)).isCloseTo(Math.sqrt(parts + crossed), within(1e-12));
  }

  @Test
  void whatBothEndsShareCancelsInAnIncrement() {
    CalibrationUncertainty shared = new CalibrationUncertainty(CURVE, 1e-4, 1e-7, 0, 0.2);
    assertThat(shared.incrementMm(2100, 2100, 0)).isZero();
    assertThat(shared.incrementMm(2100, 2110, 0)).isLessThan(0.02 * shared.depthMm(2110, 0));
    assertThat(shared.incrementMm(1050, 2100, 0))
        .as("from f0, where only f0 matters")
        .isCloseTo(Math.sqrt(0.034 * 0.034 + 0.105 * 0.105 + 0.11025 * 0.11025), within(1e-12));
  }

  @Test
  void theNoiseOfBothEndsAddsInSquares() {
    CalibrationUncertainty none = new CalibrationUncertainty(CURVE, 0, 0, 0, 0);
    assertThat(none.incrementMm(1050, 2100, 0.1))
        .isCloseTo(Math.hypot(0.017, 0.034), within(1e-12));
  }

  /** Repeats a bench calibration 4000 times: the scatter is what the first one's fit predicts. */
  @Test
  void theUncertaintyOfAFitIsTheScatterOfRepeatedFits() {
    double[] depths = {50, 100, 150, 200, 300, 400, 500, 600};
    double[] frequencies = new double[depths.length];
    for (int i = 0; i < depths.length; i++) {
      frequencies[i] = CURVE.frequencyHz(depths[i]);
    }
    Random random = new Random(5);
    int repeats = 4000;
    double predicted = 0;
    double squares = 0;
    for (int repeat = 0; repeat < repeats; repeat++) {
      double[] noisy = new double[depths.length];
      for (int i = 0; i < depths.length; i++) {
        noisy[i] = depths[i] + 0.3 * random.nextGaussian();
      }
      CalibrationFit fit = CalibrationFit.of(frequencies, noisy, 1050);
      double u = fit.uncertainty(0).depthMm(2000, 0);
      predicted += u * u / repeats;
      double error = fit.curve().depthMm(2000) - CURVE.depthMm(2000);
      squares += error * error / repeats;
    }
    // Relative scatter of a variance from 4000 draws: √(2/4000) = 2.2 %; three of them.
    assertThat(predicted / squares).isCloseTo(1, within(0.07));
  }
}
