package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NeutralAggregatingFilterTest {

  private static double[] hourly(WireLevels levels, int hours) {
    return new NeutralAggregatingFilter().hourlyCatchMm(levels, Depths.hours(hours));
  }

  @Test
  void steadyRainFallsInItsHours() {
    // 12 mm/h, 1 mm in each five minutes, from 00:30 to 02:30.
    WireLevels levels =
        Depths.minutely(180, minute -> 400 + 0.2 * Math.min(Math.max(minute - 30, 0), 120));
    assertThat(hourly(levels, 3)).containsExactly(new double[] {6, 12, 6}, within(1e-6));
  }

  @Test
  void fiveMinuteStepsAreSettledByTheRule() {
    // Steps of 0, 0.3, -0.2, 0.05, 0.5 and -0.1 mm from 00:45: 0.1 ends at 00:55, 0.45 at 01:10.
    double[] level = {400, 400, 400.3, 400.1, 400.15, 400.65, 400.55};
    double[] minutes = {45, 50, 55, 60, 65, 70, 75};
    assertThat(hourly(Depths.at(minutes, level), 2))
        .containsExactly(new double[] {0.1, 0.45}, within(1e-6));
  }

  @Test
  void aStepStampedAtTheEndOfAnHourBelongsToIt() {
    assertThat(hourly(Depths.at(new double[] {0, 60, 120}, new double[] {400, 401, 403}), 2))
        .containsExactly(new double[] {1, 2}, within(1e-6));
  }

  @Test
  void catchAcrossAGapBelongsToTheFirstReadingAfter() {
    assertThat(hourly(Depths.at(new double[] {10, 20, 190, 200}, new double[] {1, 1, 6, 6}), 4))
        .containsExactly(new double[] {0, 0, 0, 5}, within(1e-6));
  }

  @Test
  void evaporationIsTakenOffThePrecipitation() {
    // Half a millimetre evaporates in the first hour, then two fall at once.
    WireLevels levels =
        Depths.minutely(
            180, m -> 400 - 0.01 * Math.min(Math.max(m - 10, 0), 50) + (m > 125 ? 2 : 0));
    assertThat(hourly(levels, 3)).containsExactly(new double[] {0, 0, 1.5}, within(1e-6));
  }
}
