package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.practice.published.Depths.NONE;

import org.junit.jupiter.api.Test;

class FiveMinuteMediansTest {

  @Test
  void theMedianStandsForTheLevelAtItsMark() {
    WireLevels medians = FiveMinuteMedians.of(Depths.minutely(12, minute -> 400 + minute));
    assertThat(Depths.minutesOf(medians)).containsExactly(0, 5, 10);
    assertThat(Depths.wire(medians, 0)).containsExactly(401, 405, 410);
  }

  @Test
  void aSpikeDoesNotMoveIt() {
    WireLevels medians = FiveMinuteMedians.of(Depths.minutely(7, m -> m == 4 ? 900 : 400));
    assertThat(Depths.wire(medians, 0)).containsExactly(400, 400);
  }

  @Test
  void aBlockClosesTwoAndAHalfMinutesAfterItsMark() {
    WireLevels medians =
        FiveMinuteMedians.of(
            Depths.at(new double[] {2.5, 2.6, 7.5, 7.6}, new double[] {1, 2, 3, 4}));
    assertThat(Depths.minutesOf(medians)).containsExactly(0, 5, 10);
    assertThat(Depths.wire(medians, 0)).containsExactly(1, 2.5, 4);
  }

  @Test
  void readingsFartherApartStandForThemselves() {
    WireLevels medians = FiveMinuteMedians.of(Depths.every(15, new double[] {400, 401, 403}));
    assertThat(Depths.minutesOf(medians)).containsExactly(0, 15, 30);
    assertThat(Depths.wire(medians, 0)).containsExactly(400, 401, 403);
  }

  @Test
  void missingReadingsAreSkippedWireByWire() {
    WireLevels medians =
        FiveMinuteMedians.of(
            Depths.every(
                2,
                new double[] {400, NONE, 402, 406, NONE},
                new double[] {NONE, NONE, NONE, 300, NONE}));
    assertThat(Depths.minutesOf(medians)).containsExactly(0, 5);
    assertThat(Depths.wire(medians, 0)).containsExactly(400, 404);
    assertThat(Depths.wire(medians, 1)).containsExactly(NONE, 300);
  }
}
