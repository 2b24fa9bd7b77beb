package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.rain;
import static org.rimebook.fixture.Bucket.span;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

/** What is known, and what isn't, where readings and entries leave the bucket out of sight. */
class UnknownCatchTest {

  private static double mm(TotalRow row) {
    return row.catchUnits().orElseThrow() / 100.0;
  }

  private static Entry visit(double from, double to) {
    return new Entry.ServiceVisit(
        header("v"), span(from, to), List.of(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static Entry late(double from, double to) {
    return new Entry.LateCatch(header("l"), span(from, to));
  }

  @Test
  void lateCatchRunningPastTheLastReadingKeepsItsTotal() {
    Totals totals = Bucket.every(10, 24).level(rain(20, 23, 2)).entry(late(18, 30)).totals();
    TotalRow last = totals.hourly().get(23);
    assertThat(mm(last)).isCloseTo(6, within(0.05));
    assertThat(last.accumulatedSinceMs()).hasValue(ms(18));
    assertThat(last.quality()).isEqualTo(Quality.GOOD);
  }

  @Test
  void lateCatchFromBeforeTheFirstReadingKeepsItsTotal() {
    Totals totals = Bucket.every(10, 24).level(rain(2, 4, 1.5)).entry(late(-5, 6)).totals();
    assertThat(mm(totals.hourly().get(5))).isCloseTo(3, within(0.05));
    assertThat(totals.hourly().get(5).accumulatedSinceMs()).hasValue(ms(0));
  }

  @Test
  void aVisitInsideALateCatchLosesNothing() {
    Totals totals =
        Bucket.every(10, 24)
            .level(hour -> rain(8, 13, 1).applyAsDouble(hour) + (hour < 10.7 ? 0 : -100))
            .entry(late(8, 12))
            .entry(visit(10.5, 11))
            .totals();
    double before = mm(totals.hourly().get(10));
    double after = mm(totals.hourly().get(11));
    assertThat(before + after).isCloseTo(3.3, within(0.25));
    assertThat(mm(totals.hourly().get(12))).isCloseTo(1, within(0.05));
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.GOOD);
  }

  @Test
  void aLargeFallOverAGapLeavesItsCatchUnknown() {
    Totals totals =
        Bucket.every(10, 48).level(hour -> hour < 10 ? 250 : 150).silent(8, 12).totals();
    assertThat(totals.hourly().get(9).quality()).isEqualTo(Quality.MISSING);
    assertThat(totals.hourly().get(9).reasons()).contains(Reason.UNKNOWN_CATCH);
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.POOR);
  }

  @Test
  void aTotalThatLacksATimeSaysHowMuchMayBeLacking() {
    Totals totals =
        Bucket.every(10, 240)
            .level(rain(30, 50, 1, 100, 110, 1, 170, 200, 0.5))
            .silent(60, 72)
            .entry(visit(65, 66))
            .totals();
    TotalRow day = totals.daily().get(2);
    assertThat(day.quality()).isEqualTo(Quality.POOR);
    assertThat(day.uncertaintyMm().orElseThrow()).isGreaterThan(2);
  }

  @Test
  void theLoggerMayBeSwitchedOffAWhileBeforeAVisit() {
    Totals totals = Bucket.every(5, 24).silent(9.6, 11).entry(visit(10, 11)).noise(0.02).totals();
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.GOOD);
    assertThat(mm(totals.daily().get(0))).isLessThan(0.02);
  }

  @Test
  void anHourSpentInAVisitRestsOnTheAnalystsWord() {
    TotalRow hour = Bucket.every(10, 24).entry(visit(10, 12.5)).totals().hourly().get(11);
    assertThat(hour.catchUnits()).hasValue(0);
    assertThat(hour.quality()).isEqualTo(Quality.ESTIMATE);
  }

  @Test
  void anEstimateOverTheHourIsAccumulatedHoweverShort() {
    Totals totals =
        Bucket.every(10, 24)
            .level(rain(9, 13, 5))
            .entry(new Entry.Estimate(header("e"), span(10.5, 11 + 1 / 6.0), 3, "neighbour"))
            .totals();
    assertThat(totals.hourly().get(10).quality()).isEqualTo(Quality.MISSING);
    TotalRow later = totals.hourly().get(11);
    assertThat(later.accumulatedSinceMs()).hasValue(ms(10));
    assertThat(mm(later)).isCloseTo(2.5 + 3 + 25 / 6.0, within(0.1));
  }

  @Test
  void readingsSixHoursApartTellNoHour() {
    Totals totals = Bucket.every(360, 96).level(rain(24, 30, 1)).totals();
    assertThat(totals.hourly().get(26).quality()).isEqualTo(Quality.MISSING);
    assertThat(totals.hourly().get(29).accumulatedSinceMs()).hasValue(ms(24));
    assertThat(mm(totals.hourly().get(29))).isCloseTo(6, within(0.1));
    assertThat(mm(totals.daily().get(1))).isCloseTo(6, within(0.1));
  }

  @Test
  void aSeasonWithoutAnyUsableReadingHasNoTotal() {
    Entry all = new Entry.BadInterval(header("b"), span(-1, 100), Set.of(), BadReason.OTHER);
    assertThat(Bucket.every(10, 24).entry(all).totals().seasonUnits()).isEmpty();
  }
}
