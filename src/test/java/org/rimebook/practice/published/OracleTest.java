package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.practice.published.Depths.NONE;

import java.time.Duration;
import java.util.BitSet;
import org.junit.jupiter.api.Test;

class OracleTest {

  private static final Duration CALM = Duration.ofMinutes(5);

  private static double[] hourly(WireLevels levels, int hours, int... wet) {
    BitSet wetHour = new BitSet();
    for (int hour : wet) {
      wetHour.set(hour);
    }
    return new Oracle(wetHour, CALM).hourlyCatchMm(levels, Depths.hours(hours));
  }

  @Test
  void aDryRunIsOneLevelAtBothItsEnds() {
    // Dry 00-01 at 400 ± 1, wet 01-02, dry 02-04 with mean 403.
    WireLevels levels =
        Depths.every(30, new double[] {401, 400, 399, 401, 402, 404, 403, 402, 404});
    assertThat(hourly(levels, 4, 1)).containsExactly(new double[] {0, 3, 0, 0}, within(1e-9));
  }

  @Test
  void aBoundaryBetweenWetHoursIsTheMeanOfItsWindow() {
    // 00-01 dry at 400; about 02:00 the readings of 01:58, 02:00 and 02:02 count, 01:56 doesn't.
    double[] minutes = {0, 30, 60, 116, 118, 120, 122, 180, 210};
    double[] level = {400, 400, 400, 7, 401, 402, 406, 410, 410};
    assertThat(hourly(Depths.at(minutes, level), 4, 1, 2))
        .containsExactly(new double[] {0, 3, 7, 0}, within(1e-9));
  }

  @Test
  void aWetHourCanComeOutNegative() {
    WireLevels levels = Depths.every(60, new double[] {400, 400, 399, 399});
    assertThat(hourly(levels, 3, 1)).containsExactly(new double[] {0, -1, 0}, within(1e-9));
  }

  @Test
  void aDryHourCaughtNothing() {
    assertThat(hourly(Depths.minutely(120, minute -> minute), 2)).containsExactly(0, 0);
  }

  @Test
  void aWetSeasonIsBoundedByItsFirstAndLastReadings() {
    assertThat(hourly(Depths.every(60, new double[] {400, 401, 403}), 2, 0, 1))
        .containsExactly(new double[] {1, 2}, within(1e-9));
  }

  @Test
  void catchAcrossAGapBelongsToTheFirstReadingAfter() {
    WireLevels levels = Depths.every(60, new double[] {1, 1, NONE, NONE, 6, 7});
    assertThat(hourly(levels, 5, 1, 2, 3, 4))
        .containsExactly(new double[] {0, 0, 0, 5, 1}, within(1e-9));
  }

  @Test
  void aWindowHasALength() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Oracle(new BitSet(), Duration.ZERO));
  }
}
