package org.rimebook.totals.neighbour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.totals.Quality;

class ComparisonTest {

  private static final ZoneOffset OFFSET = ZoneOffset.ofHours(-7);

  private static Comparison compare(List<DayCatch> own, List<DayCatch> other) {
    return Comparison.of(own, List.of(other), OFFSET);
  }

  @Test
  void daysAreMatchedByStartAndEnd() {
    Comparison found =
        compare(
            List.of(Days.day(0, 1), Days.day(1, 2), Days.day(3, 4)),
            List.of(Days.day(1, 5), Days.day(2, 6), Days.day(3, 7)));
    assertThat(found.pairs())
        .containsExactly(new Pair(Days.span(1, 2), 2, 5), new Pair(Days.span(3, 4), 4, 7));
    assertThat(found.own()).isEqualTo(new LeftOut(3, 0, 0, 0, 1));
    assertThat(found.others()).containsExactly(new LeftOut(3, 0, 0, 0, 1));
  }

  @Test
  void whatAccumulatedOverDaysIsMatchedWithTheSumOfTheOthersDays() {
    Comparison found =
        compare(
            List.of(Days.missing(0), Days.missing(1), Days.caught(0, 3, 9), Days.day(3, 1)),
            Days.list(4, day -> day + 1));
    assertThat(found.pairs())
        .containsExactly(new Pair(Days.span(0, 3), 9, 6), new Pair(Days.span(3, 4), 1, 4));
    assertThat(found.own()).as("held by a later row").isEqualTo(new LeftOut(4, 0, 0, 0, 0));
  }

  @Test
  void runsThatOverlapAreMatchedWhereBothEnd() {
    Comparison found =
        compare(
            List.of(Days.caught(0, 2, 3), Days.day(2, 4), Days.day(3, 5)),
            List.of(Days.day(0, 1), Days.caught(1, 3, 6), Days.day(3, 5)));
    assertThat(found.pairs())
        .containsExactly(new Pair(Days.span(0, 3), 7, 7), new Pair(Days.span(3, 4), 5, 5));
  }

  @Test
  void aHoleInsideARunOfDaysLeavesTheRunOut() {
    Comparison found =
        compare(
            List.of(Days.caught(0, 3, 9), Days.day(3, 1)),
            List.of(Days.day(0, 1), Days.day(2, 3), Days.day(3, 2)));
    assertThat(found.pairs()).containsExactly(new Pair(Days.span(3, 4), 1, 2));
  }

  @Test
  void poorDaysAreLeftOutAndSuspectOnesCounted() {
    Comparison found =
        compare(
            List.of(Days.of(0, 1, Quality.POOR), Days.of(1, 2, Quality.SUSPECT), Days.missing(2)),
            Days.list(3, day -> 1));
    assertThat(found.pairs()).hasSize(1);
    assertThat(found.own()).isEqualTo(new LeftOut(3, 1, 1, 1, 0));
    assertThat(found.others()).containsExactly(new LeftOut(3, 0, 0, 0, 2));
  }

  @Test
  void severalNeighboursCountByTheirMeanWhereAllHaveTheTime() {
    Comparison found =
        Comparison.of(
            Days.list(4, day -> 2),
            List.of(Days.list(4, day -> 1), Days.list(3, day -> 3), Days.list(4, day -> 8)),
            OFFSET);
    assertThat(found.pairs()).hasSize(3);
    assertThat(found.otherMm()).isCloseTo(12, within(1e-12));
    assertThat(found.ratio()).hasValue(0.5);
  }

  @Test
  void aDayBelongsToTheMonthItBeginsIn() {
    Comparison found = compare(Days.list(31, day -> 1), Days.list(31, day -> 2));
    assertThat(found.months())
        .containsExactly(
            new MonthRatio(YearMonth.of(2024, 11), 30, 30, 60),
            new MonthRatio(YearMonth.of(2024, 12), 1, 1, 2));
  }

  @Test
  void nothingInCommonComparesNothing() {
    Comparison found = compare(List.of(Days.day(0, 1)), List.of(Days.day(5, 1)));
    assertThat(found.pairs()).isEmpty();
    assertThat(found.ratio()).isEmpty();
    assertThat(found.slopeBreak()).isEmpty();
    assertThat(found.months()).isEmpty();
  }

  @Test
  void aNeighbourThatCaughtNothingGivesNoRatio() {
    Comparison found = compare(Days.list(40, day -> 1), Days.list(40, day -> 0));
    assertThat(found.ratio()).isEmpty();
    assertThat(found.slopeBreak()).isEmpty();
    assertThat(found.months().get(0).ratio()).isEmpty();
  }
}
