package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Chamber tests of 256 wires gave about −0.004 % of the reading per °C (Lamb, Persaud and
 * Mouradian, AMS 89th annual meeting, 2009); at 600 mm a swing of 20 °C is then −0.48 mm, worked by
 * hand.
 */
class TemperatureCoefficientReferenceTest {

  @Test
  void aSwingOfTwentyDegreesMovesAFullBucketByHalfAMillimetre() {
    Weather weather = Trial.weather();
    double[] changeMm = Trial.change(new TemperatureCoefficient(-4e-5, 0, 5, 0), 0, 600);
    for (int i = 1; i < changeMm.length; i++) {
      double swingDegC = weather.airTemperatureDegC(i) - weather.airTemperatureDegC(0);
      assertThat(changeMm[i] - changeMm[0]).isCloseTo(-0.48 / 20 * swingDegC, within(1e-9));
    }
  }
}
