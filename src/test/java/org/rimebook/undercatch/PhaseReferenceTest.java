package org.rimebook.undercatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The classes of Kochendorfer et al. 2017, Hydrol. Earth Syst. Sci. 21, 3525–3542: solid below −2
 * °C, mixed from −2 to 2 °C.
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
}
