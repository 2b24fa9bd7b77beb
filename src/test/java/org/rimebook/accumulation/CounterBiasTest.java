package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a counter's steps leave in the mean of many readings, against counted readings. */
class CounterBiasTest {

  private static final double STEP_MM = 0.2;

  @Test
  void withoutNoiseTheMeanIsAnywhereWithinAStep() {
    assertThat(CounterBias.ofWire(STEP_MM, 0)).isEqualTo(STEP_MM * STEP_MM / 12);
  }

  @Test
  void noCounterLeavesNothing() {
    assertThat(CounterBias.ofWire(0, 0.01)).isZero();
  }

  /** Means of two thousand readings each, at two hundred places within a step. */
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.2, 0.3, 0.5})
  void whatMeansAreOffByIsNoMoreThanSaidAndMostOfIt(double sdInSteps) {
    Random random = new Random(7);
    double sdMm = sdInSteps * STEP_MM;
    double square = 0;
    double readingMm2 = 0;
    int places = 200;
    int readings = 2000;
    for (int place = 0; place < places; place++) {
      double truth = STEP_MM * place / places;
      double sum = 0;
      double squares = 0;
      for (int i = 0; i < readings; i++) {
        double read = STEP_MM * Math.rint((truth + sdMm * random.nextGaussian()) / STEP_MM);
        sum += read - truth;
        squares += (read - truth) * (read - truth);
      }
      square += sum / readings * sum / readings / places;
      readingMm2 += squares / readings / places;
    }
    double said = CounterBias.ofWire(STEP_MM, readingMm2);
    double chance = readingMm2 / readings;
    assertThat(square).isBetween(0.4 * said, 1.05 * said + 3 * chance);
    assertThat(said)
        .isCloseTo(
            STEP_MM * STEP_MM / 12 * Math.exp(-Math.pow(2 * Math.PI * sdInSteps, 2)),
            within(0.15 * said + chance));
  }
}
