package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalLong;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimebook.fixture.Bucket;
import org.rimebook.undercatch.Phase;

/**
 * Snow of 2 mm/h from 03:00 to 08:00 into a single-Alter gauge with its rim at 2 m. A wind of 5 m/s
 * there, 5 / 0.767010 at 10 m, leaves CE = 0.572600 at −5 °C (Kochendorfer et al. 2017, Hydrol.
 * Earth Syst. Sci. 21, 3525–3542, eq. 3).
 */
class HalfHourAdjustmentTest {

  private static final double WIND_MS = 5 / 0.767010;
  private static final double EFFICIENCY = 0.572600;

  private static Bucket snowfall(int minutes) {
    return Bucket.every(minutes, 24).level(Bucket.rain(3, 8, 2));
  }

  private static OptionalLong adjusted(Bucket bucket, int hour) {
    return bucket.totals().hourly().get(hour).adjustedUnits();
  }

  private static double adjustedMm(Bucket bucket, int hour) {
    return adjusted(bucket, hour).orElseThrow() / 100.0;
  }

  /** A reading closes its interval: the one stamped at the half hour is the first half's last. */
  private static boolean firstHalf(double hour) {
    double minute = 60 * (hour - Math.floor(hour));
    return minute > 1 && minute < 31;
  }

  private static DoubleUnaryOperator halves(double first, double second) {
    return hour -> firstHalf(hour) ? first : second;
  }

  @Test
  void eachHalfHourHasItsOwnWind() {
    Bucket gusty = snowfall(10).weather(hour -> -5, halves(0, WIND_MS));
    assertThat(adjustedMm(gusty, 5)).isCloseTo(1 + 1 / EFFICIENCY, within(0.05));
    // the mean wind of the hour would give 2 / exp(-0.0348 * 2.5 * 3.204) = 2.64 mm
    assertThat(adjustedMm(gusty, 5)).isGreaterThan(2.70);
  }

  @Test
  void anHourlyReadingStandsForBothHalves() {
    Bucket hourly = snowfall(60).weather(hour -> -5, WIND_MS);
    TotalRow hour = hourly.totals().hourly().get(5);
    assertThat(hour.adjustedUnits().orElseThrow() / (double) hour.catchUnits().orElseThrow())
        .isCloseTo(1 / EFFICIENCY, within(0.01));
  }

  @Test
  void aHalfHourWithCatchAndNoWindLeavesItsHourOpen() {
    Bucket halfBlind = snowfall(10).weather(hour -> -5, halves(Double.NaN, WIND_MS));
    assertThat(adjusted(halfBlind, 5)).isEmpty();
    assertThat(adjusted(halfBlind, 20)).hasValue(0);
  }

  @Test
  void anHourWithoutAnyWindHasNoAdjustedTotalThoughNothingFell() {
    Bucket calm = snowfall(10).weather(hour -> -5, hour -> hour > 20 ? Double.NaN : WIND_MS);
    assertThat(adjusted(calm, 21)).isEmpty();
    assertThat(adjusted(calm, 12)).hasValue(0);
  }

  @ParameterizedTest
  @CsvSource({"-6999, 3", "61, 3", "-5, 9999", "-5, -1"})
  void impossibleReadingsAreLeftOut(double airTempC, double windMs) {
    DoubleUnaryOperator air = hour -> Math.abs(hour - 5.5) < 0.01 ? airTempC : -5;
    DoubleUnaryOperator wind = hour -> Math.abs(hour - 5.5) < 0.01 ? windMs : 3;
    Bucket sound = snowfall(10).weather(hour -> -5, 3);
    Bucket faulty = snowfall(10).weather(air, wind);
    assertThat(adjusted(faulty, 5)).isPresent().isEqualTo(adjusted(sound, 5));
    assertThat(faulty.totals().hourly().get(5).phase()).contains(Phase.SNOW);
  }

  /** ln(1/0.01)/ln(9/0.01) = 0.676992 of the wind at the anemometer reaches the rim. */
  @Test
  void snowOnTheGroundBringsTheRimNearerToIt() {
    Bucket deep = snowfall(10).weather(hour -> -5, hour -> 5 / 0.676992, hour -> 1);
    assertThat(adjustedMm(deep, 5)).isCloseTo(2 / EFFICIENCY, within(0.05));
    Bucket buried = snowfall(10).weather(hour -> -5, hour -> WIND_MS, hour -> 2);
    assertThat(adjusted(buried, 5)).isEmpty();
  }

  @Test
  void aBlindedSnowSensorKeepsItsDepthForADay() {
    Bucket blinded =
        Bucket.every(10, 72)
            .level(Bucket.rain(3, 8, 2, 50, 55, 2))
            .weather(hour -> -5, hour -> 5 / 0.676992, hour -> hour > 1 ? Double.NaN : 1);
    assertThat(adjustedMm(blinded, 5)).isCloseTo(2 / EFFICIENCY, within(0.05));
    assertThat(adjusted(blinded, 52)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"5.0, 6.0, false", "5.0, 5.5, true", "5.3334, 6.0, true"})
  void catchInAGapIsAdjustedWhereItsHalfHourIsKnown(double after, double before, boolean known) {
    Bucket holed = snowfall(10).weather(hour -> -5, WIND_MS).silent(after, before);
    TotalRow hour = holed.totals().hourly().get(5);
    assertThat(hour.catchUnits().orElseThrow() / 100.0).isCloseTo(2, within(0.02));
    assertThat(hour.adjustedUnits().isPresent()).isEqualTo(known);
    if (known) {
      assertThat(hour.adjustedUnits().getAsLong() / 100.0).isCloseTo(2 / EFFICIENCY, within(0.05));
    }
  }
}
