package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class HighWaterMarkTest {

  private static double[] hourly(WireLevels levels, int hours) {
    return new HighWaterMark().hourlyCatchMm(levels, Depths.hours(hours));
  }

  @Test
  void aRiseCountsOnceItReachesTheHysteresis() {
    // 0.1 waits; 0.2 counts at 01:00; 0.35 waits; 0.45 counts 0.25 at 02:00.
    WireLevels levels = Depths.every(30, new double[] {400, 400.1, 400.2, 400.35, 400.45});
    assertThat(hourly(levels, 2)).containsExactly(new double[] {0.2, 0.25}, within(1e-9));
  }

  @Test
  void whatEvaporatedMustFallAgainBeforeAnythingCounts() {
    WireLevels levels = Depths.every(60, new double[] {400, 401, 400.2, 401.1, 401.5});
    assertThat(hourly(levels, 4)).containsExactly(new double[] {1, 0, 0, 0.5}, within(1e-9));
  }

  @Test
  void theMeanOfTheWiresIsWhatRises() {
    WireLevels levels =
        Depths.every(60, new double[] {400, 400.6}, new double[] {300, 300}, new double[] {9, 9});
    assertThat(hourly(levels, 1)).containsExactly(new double[] {0.2}, within(1e-9));
  }
}
