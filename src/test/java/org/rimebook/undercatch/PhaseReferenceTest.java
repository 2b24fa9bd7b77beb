package org.rimebook.undercatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * By air temperature: the classes of Kochendorfer et al. 2017, Hydrol. Earth Syst. Sci. 21,
 * 3525–3542: solid below −2 °C, mixed from −2 to 2 °C. By humidity too: the curve for hours of
 * Harder and Pomeroy 2013, Hydrol. Process. 27, 1901–1914, with values computed from it apart from
 * the code.
 */
class PhaseReferenceTest {

  @ParameterizedTest
  @CsvSource({"-30, snow", "-2.01, snow", "-2, mixed", "0, mixed", "2, mixed", "2.01, rain"})
  void airTemperatureGivesThePhase(double airTempC, String code) {
    assertThat(Phase.at(airTempC).code()).isEqualTo(code);
  }

  @Test
  void aMissingTemperatureHasNoPhase() {
    assertThatThrownBy(() -> Phase.at(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "-2, 0.003303",
    "-1, 0.034281",
    "0, 0.275482",
    "0.5, 0.554449",
    "1, 0.802867",
    "2, 0.977590"
  })
  void theShareOfRainIsThePublishedCurve(double particleC, double share) {
    assertThat(Phase.rainShare(particleC)).isCloseTo(share, within(5e-7));
  }

  @Test
  void halfOfItIsRainAtFourTenthsOfADegree() {
    assertThat(Phase.rainShare(0.407788)).isCloseTo(0.5, within(1e-6));
  }

  /** In saturated air the particle is as warm as the air; in dry air it is colder. */
  @ParameterizedTest
  @CsvSource({
    "3, 100, rain",
    "1, 100, mixed",
    "-1, 100, snow",
    "3, 50, mixed",
    "3, 35, snow",
    "5, 90, rain",
    "-0.5, 100, mixed",
    "-0.5, 70, snow"
  })
  void dryAirKeepsSnowFromMelting(double airTempC, double humidityPct, String code) {
    assertThat(Phase.at(airTempC, humidityPct, 300).code()).isEqualTo(code);
  }

  @Test
  void aSensorThatReadsMoreThanSaturationCountsAsSaturated() {
    assertThat(Phase.at(1.2, 104, 0)).isEqualTo(Phase.at(1.2, 100, 0));
  }

  @Test
  void aMissingHumidityIsNotGuessed() {
    assertThatThrownBy(() -> Phase.at(1, Double.NaN, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
