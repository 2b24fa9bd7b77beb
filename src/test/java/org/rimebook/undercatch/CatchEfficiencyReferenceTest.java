package org.rimebook.undercatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.station.WindShield;

/**
 * Kochendorfer et al. 2017, Hydrol. Earth Syst. Sci. 21, 3525–3542, eq. 3, sets for wind at gauge
 * height: a, b, c of the unshielded gauge 0.0785, 0.729, 0.407 and of the single-Alter gauge
 * 0.0348, 1.366, 0.779. The values were computed from these apart from the code, to six decimals;
 * the tolerance is half of the last.
 */
class CatchEfficiencyReferenceTest {

  @ParameterizedTest
  @CsvSource({
    "3, -5, 0.528235, 0.715666",
    "5, -5, 0.345180, 0.572600",
    "5, 0, 0.575655, 0.733780",
    "5, 2, 0.842254, 0.907301",
    "5, -10, 0.327824, 0.565441",
    "10, -10, 0.200689, 0.439985"
  })
  void theEfficiencyIsThePublishedOne(
      double windMs, double airTempC, double unshielded, double singleAlter) {
    assertThat(CatchEfficiency.UNSHIELDED.at(windMs, airTempC)).isCloseTo(unshielded, within(5e-7));
    assertThat(CatchEfficiency.SINGLE_ALTER.at(windMs, airTempC))
        .isCloseTo(singleAlter, within(5e-7));
  }

  /** The largest wind of both sets is 7.2 m/s; at −10 °C the unshielded catch is then a fifth. */
  @ParameterizedTest
  @EnumSource
  void windBeyondTheLargestOfTheSetChangesNothing(CatchEfficiency efficiency) {
    assertThat(efficiency.at(10, -10)).isEqualTo(efficiency.at(7.2, -10));
    assertThat(efficiency.at(7.1, -10)).isGreaterThan(efficiency.at(7.2, -10));
  }

  @Test
  void theLargestAdjustmentOfAnUnshieldedGaugeAtTenBelowIsAlmostFivefold() {
    assertThat(1 / CatchEfficiency.UNSHIELDED.at(7.2, -10)).isCloseTo(4.98, within(0.005));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-40, -2, 0, 2, 8, 35})
  void withoutWindEverythingIsCaught(double airTempC) {
    for (CatchEfficiency efficiency : CatchEfficiency.values()) {
      assertThat(efficiency.at(0, airTempC)).isEqualTo(1);
    }
  }

  /** tan(1 + c)/b = 8.2997 °C for the unshielded set: the formula passes 1 there. */
  @Test
  void theUnshieldedGaugeCatchesEverythingAboveEightDegreesAndNeverMore() {
    assertThat(CatchEfficiency.UNSHIELDED.at(5, 8.2996)).isLessThan(1).isCloseTo(1, within(1e-5));
    assertThat(CatchEfficiency.UNSHIELDED.at(5, 8.2998)).isEqualTo(1);
    assertThat(CatchEfficiency.UNSHIELDED.at(7.2, 30)).isEqualTo(1);
  }

  /** 1 + c exceeds π/2 for the single-Alter set: exp(−5·0.0348·(1.779 − π/2)) = 0.9644. */
  @Test
  void theSingleAlterGaugeMissesSomeRainAtAnyTemperature() {
    assertThat(CatchEfficiency.SINGLE_ALTER.at(5, 1e9)).isCloseTo(0.9644, within(5e-5));
  }

  @Test
  void eachShieldHasItsOwnFunctionAndOthersNone() {
    assertThat(CatchEfficiency.of(WindShield.UNSHIELDED)).contains(CatchEfficiency.UNSHIELDED);
    assertThat(CatchEfficiency.of(WindShield.SINGLE_ALTER)).contains(CatchEfficiency.SINGLE_ALTER);
    assertThat(CatchEfficiency.of(WindShield.OTHER)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void whatIsMissingHasNoEfficiency(CatchEfficiency efficiency) {
    assertThat(efficiency.at(Double.NaN, -5)).isNaN();
    assertThat(efficiency.at(5, Double.NaN)).isNaN();
  }
}
