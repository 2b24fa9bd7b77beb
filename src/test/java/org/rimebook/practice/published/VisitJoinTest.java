package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.practice.published.Depths.NONE;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Interval;

class VisitJoinTest {

  /** One wire every 20 min, joined across visits given as minutes from and to. */
  private static double[] joined(double[] depthMm, int... minutes) {
    List<Interval> visits =
        IntStream.range(0, minutes.length / 2)
            .mapToObj(
                i -> new Interval(Depths.minute(minutes[2 * i]), Depths.minute(minutes[2 * i + 1])))
            .toList();
    return Depths.wire(VisitJoin.across(Depths.every(20, depthMm), visits), 0);
  }

  @Test
  void theDepthGoesOnFromWhereItWas() {
    assertThat(joined(new double[] {500, 501, 900, 3, 100, 101, 102}, 40, 80))
        .containsExactly(500, 501, NONE, NONE, 501, 502, 503);
  }

  @Test
  void theDepthBesideAVisitIsAMedian() {
    // Readings every 5 min: 10, 20 and 90 before, 2, 4 and 9 after; the visit is at 15 min.
    WireLevels levels = Depths.every(5, new double[] {10, 90, 20, 0, 0, 4, 2, 9, 9, 9});
    Interval visit = new Interval(Depths.minute(15), Depths.minute(25));
    assertThat(Depths.wire(VisitJoin.across(levels, List.of(visit)), 0))
        .containsExactly(10, 90, 20, NONE, NONE, 20, 18, 25, 25, 25);
  }

  @Test
  void readingsFarAwayAreBetterThanNone() {
    assertThat(joined(new double[] {500, NONE, NONE, NONE, NONE, NONE, 102, 103}, 60, 80))
        .containsExactly(500, NONE, NONE, NONE, NONE, NONE, 500, 501);
  }

  @Test
  void everyVisitIsJoined() {
    assertThat(joined(new double[] {500, 1, 100, 1, 200, 201}, 20, 40, 60, 80))
        .containsExactly(500, NONE, 500, NONE, 500, 501);
  }

  @Test
  void aWireThatStartsOrEndsWithAVisitIsNotShifted() {
    assertThat(joined(new double[] {1, 100, 101, 2}, 0, 20, 60, 120))
        .containsExactly(NONE, 100, 101, NONE);
  }

  @Test
  void aWireThatIsAwayDuringAVisitIsShiftedAsTheOthers() {
    // The first wire is away from before the visit on until some time after it.
    WireLevels levels =
        Depths.every(
            10,
            new double[] {500, NONE, NONE, NONE, NONE, 104},
            new double[] {500, 501, 0, 101, 102, 103});
    Interval visit = new Interval(Depths.minute(20), Depths.minute(30));
    WireLevels joined = VisitJoin.across(levels, List.of(visit));
    assertThat(Depths.wire(joined, 1)).containsExactly(500, 501, NONE, 500.5, 501.5, 502.5);
    assertThat(Depths.wire(joined, 0)).containsExactly(500, NONE, NONE, NONE, NONE, 503.5);
  }
}
