package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SeasonResult;

/** The bucket's record starts on 10 January: hour 528 is the start of 1 February. */
class MonthlyTotalsTest {

  private static final int FEBRUARY = 22 * 24;
  private static final int MARCH = FEBRUARY + 28 * 24;

  private static Bucket winter() {
    return Bucket.every(60, MARCH + 48)
        .level(Bucket.rain(30, 40, 1, FEBRUARY + 50, FEBRUARY + 60, 2))
        .noise(0.01);
  }

  private static List<MonthTotal> months(SeasonResult result) {
    return MonthlyTotals.of(
        result.totals(Resolution.TENTH), result.season().sheet(), result.series());
  }

  private static Entry bad(double fromHour, double toHour) {
    return new Entry.BadInterval(
        Bucket.header("bad"), Bucket.span(fromHour, toHour), java.util.Set.of(), BadReason.POWER);
  }

  @Test
  void monthsAddUpToTheSeasonInThePrintedDigits() {
    SeasonResult result = winter().result();
    long sum = months(result).stream().mapToLong(m -> m.row().catchUnits().orElse(0)).sum();
    assertThat(sum).isEqualTo(result.totals(Resolution.TENTH).seasonUnits().orElseThrow());
    assertThat(months(result).get(1).row().catchUnits().orElseThrow()).isBetween(198L, 202L);
  }

  @Test
  void aWholeMonthIsAsGoodAsItsWorstDayAndAPartOfOneIsPoor() {
    List<MonthTotal> months = months(winter().result());
    assertThat(months).hasSize(3);
    assertThat(months.get(0).daysOutside()).isEqualTo(9);
    assertThat(months.get(0).row().quality()).isEqualTo(Quality.POOR);
    assertThat(months.get(1).whole()).isTrue();
    assertThat(months.get(1).row().quality()).isEqualTo(Quality.GOOD);
    assertThat(months.get(1).row().completeness()).isCloseTo(1, within(0.01));
    assertThat(months.get(0).row().completeness()).isCloseTo(22 / 31.0, within(0.01));
  }

  @Test
  void aMonthIsAboutItsCalendarDays() {
    TotalRow february = months(winter().result()).get(1).row();
    assertThat(february.interval()).isEqualTo(Bucket.span(FEBRUARY, MARCH));
    List<MonthTotal> late = months(winter().dayStartsAt(8).result());
    assertThat(late.get(1).row().interval()).isEqualTo(Bucket.span(FEBRUARY + 8, MARCH + 8));
  }

  @Test
  void daysHeldByALaterMonthAreSaidAndCountThere() {
    SeasonResult result =
        winter()
            .level(Bucket.rain(FEBRUARY - 30, FEBRUARY + 10, 1))
            .entry(bad(FEBRUARY - 40, FEBRUARY + 20))
            .result();
    List<MonthTotal> months = months(result);
    assertThat(months.get(0).daysElsewhere()).isEqualTo(2);
    assertThat(months.get(0).daysMissing()).isZero();
    assertThat(months.get(1).row().accumulatedSinceMs()).hasValue(Bucket.ms(FEBRUARY - 48));
    assertThat(months.get(1).row().catchUnits().orElseThrow()).isBetween(398L, 402L);
  }

  @Test
  void theUncertaintyIsThatOfTheLevelsAtTheEndsNotOfTheDaysOneByOne() {
    SeasonResult result = winter().result();
    TotalRow february = months(result).get(1).row();
    double ofEnds =
        Math.sqrt(
            result.series().varianceMm2(Bucket.ms(FEBRUARY), Bucket.ms(MARCH)) + 0.1 * 0.1 / 6);
    assertThat(february.uncertaintyMm().orElseThrow()).isCloseTo(ofEnds, within(1e-9));
  }

  @Test
  void aDayTheWiresDisagreeOverMakesItsMonthSuspectAndLessCertain() {
    TotalRow sound = months(winter().result()).get(1).row();
    TotalRow torn = months(winter().pull(1, FEBRUARY + 200.5, 4).result()).get(1).row();
    assertThat(torn.quality()).isEqualTo(Quality.SUSPECT);
    assertThat(torn.uncertaintyMm().orElseThrow())
        .isGreaterThan(sound.uncertaintyMm().orElseThrow() + 0.1);
  }

  @Test
  void aMonthWithoutAnyTotalIsMissing() {
    SeasonResult result = winter().entry(bad(FEBRUARY - 1, MARCH + 100)).result();
    MonthTotal february = months(result).get(1);
    assertThat(february.row().quality()).isEqualTo(Quality.MISSING);
    assertThat(february.row().catchUnits()).isEmpty();
    assertThat(february.daysMissing()).isEqualTo(28);
  }
}
