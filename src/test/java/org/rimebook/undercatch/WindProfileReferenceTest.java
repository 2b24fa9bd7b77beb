package org.rimebook.undercatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ratios of wind to the wind at 10 m by the logarithmic law (Goodison, Louie and Yang 1998,
 * WMO/TD-No. 872), computed apart from the code to six decimals; 0.767 at 2 m over 0.01 m is also
 * published. The tolerance is half of the last decimal.
 */
class WindProfileReferenceTest {

  @ParameterizedTest
  @CsvSource({
    "0.001, 0.794023, 0.825257, 0.869280, 0.924743",
    "0.01, 0.725364, 0.767010, 0.825707, 0.899657",
    "0.03, 0.673425, 0.722947, 0.792745, 0.880680",
    "0.1, 0.588046, 0.650515, 0.738561, 0.849485"
  })
  void theWindAtOneAndAHalfTwoThreeAndFiveMetresIsTheShareOfTenMetres(
      double roughnessM, double at1m5, double at2m, double at3m, double at5m) {
    double[] heightsM = {1.5, 2, 3, 5};
    double[] shares = {at1m5, at2m, at3m, at5m};
    for (int i = 0; i < heightsM.length; i++) {
      assertThat(WindProfile.toHeight(10, 10, heightsM[i], roughnessM) / 10)
          .as("at %s m over %s m", heightsM[i], roughnessM)
          .isCloseTo(shares[i], within(5e-7));
    }
  }

  @Test
  void theRoughnessOfSnowIsAHundredthOfAMetre() {
    assertThat(WindProfile.toHeight(1, 10, 2, WindProfile.SNOW_ROUGHNESS_M))
        .isCloseTo(0.767010, within(5e-7));
  }

  @Test
  void thereAndBackIsTheSameWind() {
    double there = WindProfile.toHeight(6.3, 10, 1.7, 0.01);
    assertThat(WindProfile.toHeight(there, 1.7, 10, 0.01)).isCloseTo(6.3, within(1e-12));
    assertThat(WindProfile.toHeight(6.3, 3, 3, 0.01)).isCloseTo(6.3, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 0.01, 0.01",
    "0.01, 2, 0.01",
    "10, 0, 0.01",
    "10, 2, 0",
    "10, -2, 0.01",
    "NaN, 2, 0.01"
  })
  void aHeightWhereTheLawDoesNotHoldIsRefused(double fromM, double toM, double roughnessM) {
    assertThatThrownBy(() -> WindProfile.toHeight(5, fromM, toM, roughnessM))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("above its roughness length");
  }

  @Test
  void missingWindStaysMissing() {
    assertThat(WindProfile.toHeight(Double.NaN, 10, 2, 0.01)).isNaN();
  }
}
