package org.rimebook.undercatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimebook.station.Calibration;
import org.rimebook.station.Channel;
import org.rimebook.station.Gauge;
import org.rimebook.station.RecordLayout;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Unit;
import org.rimebook.station.WindShield;
import org.rimebook.station.Wire;

class UndercatchTest {

  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final Channel AIR = new Channel("air_temperature", "t", Unit.DEG_C, NONE);

  private static Channel wind(OptionalDouble heightM) {
    return new Channel("wind_speed", "w", Unit.METRE_PER_SECOND, heightM);
  }

  private static StationSheet sheet(WindShield shield, OptionalDouble rimM, Channel... channels) {
    Calibration calibration = new Calibration(Optional.empty(), 0.0172, 8.2e-6, 1050);
    return new StationSheet(
        "Example Ridge",
        NONE,
        NONE,
        NONE,
        ZoneOffset.UTC,
        LocalTime.MIDNIGHT,
        new Gauge(200, NONE, rimM, shield),
        List.of(new Wire("north", "f", Optional.empty(), List.of(calibration))),
        new RecordLayout(
            List.of("records/*.csv"),
            "time",
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            RecordLayout.TimeIs.END,
            RecordLayout.FrequencyKind.HERTZ,
            NONE),
        List.of(channels));
  }

  private static Undercatch atTheRim(WindShield shield) {
    OptionalDouble twoM = OptionalDouble.of(2);
    return Undercatch.of(sheet(shield, twoM, AIR, wind(twoM))).orElseThrow();
  }

  @Test
  void theCatchIsDividedByTheEfficiency() {
    // 1/0.345180 and 1/0.572600, see CatchEfficiencyReferenceTest
    assertThat(atTheRim(WindShield.UNSHIELDED).adjustedMm(1, 5, -5, 0).orElseThrow())
        .isCloseTo(2.897039, within(5e-6));
    assertThat(atTheRim(WindShield.SINGLE_ALTER).adjustedMm(2, 5, -5, 0).orElseThrow())
        .isCloseTo(3.492839, within(5e-6));
  }

  @Test
  void windIsBroughtToTheOrificeBeforeItIsHeldAtTheLargest() {
    Undercatch undercatch = new Undercatch(CatchEfficiency.UNSHIELDED, 10, 2);
    // 8 m/s at 10 m is 6.136 m/s at 2 m, below the largest of 7.2 m/s
    double efficiency = CatchEfficiency.UNSHIELDED.at(8 * 0.767010, -5);
    assertThat(undercatch.adjustedMm(1, 8, -5, 0).orElseThrow())
        .isCloseTo(1 / efficiency, within(1e-5));
    assertThat(undercatch.adjustedMm(1, 20, -5, 0)).isEqualTo(undercatch.adjustedMm(1, 30, -5, 0));
  }

  @Test
  void nothingCaughtStaysNothing() {
    assertThat(atTheRim(WindShield.UNSHIELDED).adjustedMm(0, 12, -20, 0)).hasValue(0);
  }

  @Test
  void inACalmTheCatchIsAllThereWas() {
    assertThat(atTheRim(WindShield.UNSHIELDED).adjustedMm(1.4, 0, -20, 0)).hasValue(1.4);
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, 5, -5",
    "1, NaN, -5",
    "1, 5, NaN",
    "1, -0.1, -5",
    "1, 121, -5",
    "1, 5, -91",
    "1, 5, 61"
  })
  void withoutCatchWindOrTemperatureThereIsNoAdjustment(
      double catchMm, double windMs, double airTempC) {
    assertThat(atTheRim(WindShield.UNSHIELDED).adjustedMm(catchMm, windMs, airTempC, 0)).isEmpty();
  }

  /**
   * Heights of 10 and 2 m stand 9 and 1 m above a metre of snow: ln(1/0.01)/ln(9/0.01) = 0.676992
   * of the wind at the anemometer reaches the rim, 0.767010 without snow. Computed apart from the
   * code.
   */
  @Test
  void heightsCountFromTheSurfaceOfTheSnow() {
    Undercatch undercatch = new Undercatch(CatchEfficiency.SINGLE_ALTER, 10, 2);
    assertThat(undercatch.adjustedMm(1, 5 / 0.676992, -5, 1).orElseThrow())
        .isCloseTo(1 / 0.572600, within(5e-6));
    assertThat(undercatch.adjustedMm(1, 5 / 0.767010, -5, 0).orElseThrow())
        .isCloseTo(1 / 0.572600, within(5e-6));
  }

  @Test
  void aRimBuriedToTheRoughnessOfTheSnowHasNoAdjustment() {
    Undercatch undercatch = new Undercatch(CatchEfficiency.SINGLE_ALTER, 10, 2);
    assertThat(undercatch.adjustedMm(1, 5, -5, 1.98)).isPresent();
    assertThat(undercatch.adjustedMm(1, 5, -5, 1.991)).isEmpty();
    assertThat(undercatch.adjustedMm(1, 5, -5, 2.5)).isEmpty();
    assertThat(new Undercatch(CatchEfficiency.SINGLE_ALTER, 2, 10).adjustedMm(1, 5, -5, 1.995))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"-0.05, true", "-0.2, false", "21, false", "NaN, false"})
  void snowAShadeBelowTheGroundIsNoneAndAnImpossibleDepthIsUnknown(double depthM, boolean known) {
    OptionalDouble adjusted = atTheRim(WindShield.UNSHIELDED).adjustedMm(1, 5, -5, depthM);
    assertThat(adjusted.isPresent()).isEqualTo(known);
    if (known) {
      assertThat(adjusted).isEqualTo(atTheRim(WindShield.UNSHIELDED).adjustedMm(1, 5, -5, 0));
    }
  }

  /**
   * Smith et al. 2020, Hydrol. Earth Syst. Sci. 24, 4025–4043, abstract: adjusted totals of 54 to
   * 123 % at eight sites, unshielded gauges 33.4 % short unadjusted. A total of 100 mm of which
   * 66.6 mm were caught is then uncertain by 0.69/√12 · 100 mm = 19.9 mm.
   */
  @Test
  void theUncertaintyOfAnAdjustedTotalIsThePublishedSpread() {
    assertThat(Undercatch.uncertaintyMm(66.6, 0, 100)).isCloseTo(19.9, within(0.05));
  }

  @Test
  void theUncertaintyOfTheCatchIsRaisedAsTheCatchIs() {
    assertThat(Undercatch.uncertaintyMm(50, 0.3, 50)).isCloseTo(0.3, within(1e-12));
    assertThat(Undercatch.uncertaintyMm(0, 0.1, 0)).isCloseTo(0.1, within(1e-12));
    double added = Undercatch.uncertaintyMm(50, 0, 100);
    assertThat(Undercatch.uncertaintyMm(50, 3, 100))
        .isCloseTo(Math.sqrt(added * added + 36), within(1e-9));
  }

  @Test
  void aSheetThatLeavesAnythingOpenHasNoAdjustment() {
    OptionalDouble twoM = OptionalDouble.of(2);
    OptionalDouble tenM = OptionalDouble.of(10);
    WindShield shield = WindShield.UNSHIELDED;
    assertThat(Undercatch.of(sheet(shield, twoM, AIR, wind(tenM))))
        .contains(new Undercatch(CatchEfficiency.UNSHIELDED, 10, 2));
    assertThat(Undercatch.of(sheet(WindShield.OTHER, twoM, AIR, wind(tenM)))).isEmpty();
    assertThat(Undercatch.of(sheet(shield, NONE, AIR, wind(tenM)))).isEmpty();
    assertThat(Undercatch.of(sheet(shield, twoM, AIR, wind(NONE)))).isEmpty();
    assertThat(Undercatch.of(sheet(shield, twoM, AIR))).isEmpty();
    assertThat(Undercatch.of(sheet(shield, twoM, wind(tenM)))).isEmpty();
    assertThat(Undercatch.of(sheet(shield, OptionalDouble.of(0.01), AIR, wind(tenM)))).isEmpty();
  }
}
