package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.rain;
import static org.rimebook.fixture.Bucket.span;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;

class TotalsTest {

  private static double mm(TotalRow row) {
    return row.catchUnits().orElseThrow() / 100.0;
  }

  private static double sumMm(List<TotalRow> rows) {
    return rows.stream().mapToLong(r -> r.catchUnits().orElse(0)).sum() / 100.0;
  }

  private static List<Quality> qualities(List<TotalRow> rows) {
    return rows.stream().map(TotalRow::quality).toList();
  }

  @Test
  void steadyRainIsSplitAtTheHour() {
    Totals totals = Bucket.every(1, 24).level(rain(2.5, 5.5, 0.6)).totals();
    double[] hours = totals.hourly().stream().mapToDouble(TotalsTest::mm).toArray();
    assertThat(hours[1]).isEqualTo(0);
    assertThat(hours[2]).isCloseTo(0.3, within(0.02));
    assertThat(hours[3]).isCloseTo(0.6, within(0.02));
    assertThat(hours[4]).isCloseTo(0.6, within(0.02));
    assertThat(hours[5]).isCloseTo(0.3, within(0.02));
    assertThat(hours[6]).isEqualTo(0);
    assertThat(mm(totals.daily().get(0))).isCloseTo(1.8, within(0.01));
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.GOOD);
    assertThat(totals.daily().get(0).completeness()).isCloseTo(1, within(1e-9));
  }

  @Test
  void dryNoiseIsNotCatch() {
    assertThat(sumMm(Bucket.every(1, 240).noise(0.1).totals().daily())).isLessThan(0.1);
  }

  @Test
  void aGapInsideADayLeavesTheDayCompleteByDifference() {
    Totals totals = Bucket.every(10, 48).level(rain(5, 9, 1)).noise(0.02).silent(4, 8).totals();
    assertThat(qualities(totals.hourly().subList(3, 9)))
        .containsExactly(
            Quality.GOOD,
            Quality.MISSING,
            Quality.MISSING,
            Quality.MISSING,
            Quality.GOOD,
            Quality.GOOD);
    TotalRow after = totals.hourly().get(7);
    assertThat(after.accumulatedSinceMs()).hasValue(ms(4));
    assertThat(mm(after)).isCloseTo(3, within(0.1));
    assertThat(after.reasons()).contains(Reason.GAP);
    TotalRow day = totals.daily().get(0);
    assertThat(day.quality()).isEqualTo(Quality.GOOD);
    assertThat(mm(day)).isCloseTo(4, within(0.1));
    assertThat(day.completeness()).isCloseTo(20 / 24.0, within(0.01));
    assertThat(day.accumulatedSinceMs()).isEmpty();
  }

  @Test
  void aGapOverTheEndOfADayGivesItsCatchToTheLaterDay() {
    Totals totals =
        Bucket.every(10, 72).level(rain(20, 30, 0.5)).noise(0.02).silent(22, 26).totals();
    assertThat(qualities(totals.daily()))
        .containsExactly(Quality.MISSING, Quality.GOOD, Quality.GOOD);
    assertThat(totals.daily().get(0).catchUnits()).isEmpty();
    assertThat(totals.daily().get(1).accumulatedSinceMs()).hasValue(ms(0));
    assertThat(mm(totals.daily().get(1))).isCloseTo(5, within(0.1));
    assertThat(mm(totals.hourly().get(20))).isCloseTo(0.5, within(0.1));
    assertThat(totals.hourly().get(25).accumulatedSinceMs()).hasValue(ms(22));
  }

  @Test
  void nothingFellInAGapWithoutChangeOfLevel() {
    Totals totals = Bucket.every(10, 72).noise(0.02).silent(22, 26).totals();
    for (TotalRow hour : totals.hourly().subList(22, 26)) {
      assertThat(hour.catchUnits()).hasValue(0);
      assertThat(hour.quality()).isEqualTo(Quality.ESTIMATE);
      assertThat(hour.reasons()).contains(Reason.NO_CHANGE);
    }
    assertThat(qualities(totals.daily()))
        .containsExactly(Quality.ESTIMATE, Quality.ESTIMATE, Quality.GOOD);
  }

  @Test
  void aStillGapInsideADayLeavesTheDayGood() {
    Totals totals = Bucket.every(10, 48).noise(0.02).silent(10, 14).totals();
    assertThat(totals.hourly().get(11).quality()).isEqualTo(Quality.ESTIMATE);
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.GOOD);
  }

  @Test
  void emptyingTheBucketAtAVisitIsNotCatch() {
    Totals totals =
        Bucket.every(10, 48)
            .level(hour -> (hour < 10.5 ? 480 : 60) + 0.5 * Math.max(0, hour - 14))
            .noise(0.02)
            .entry(
                new Entry.ServiceVisit(
                    header("v"),
                    span(10, 11),
                    List.of(VisitAction.EMPTIED, VisitAction.RECHARGED),
                    OptionalDouble.of(4),
                    OptionalDouble.of(0.2)))
            .totals();
    assertThat(sumMm(totals.hourly().subList(0, 14))).isLessThan(0.05);
    assertThat(sumMm(totals.hourly())).isCloseTo(17, within(0.1));
    assertThat(totals.hourly().get(10).reasons()).contains(Reason.SERVICE_VISIT);
  }

  @Test
  void aVisitInsideASilenceLeavesTheCatchUnknown() {
    Totals totals =
        Bucket.every(10, 48)
            .level(hour -> hour < 12 ? 300 + hour : 60)
            .silent(8, 16)
            .entry(
                new Entry.ServiceVisit(
                    header("v"),
                    span(11, 12),
                    List.of(VisitAction.EMPTIED),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()))
            .totals();
    assertThat(qualities(totals.hourly().subList(8, 11))).containsOnly(Quality.MISSING);
    assertThat(totals.hourly().get(9).reasons()).contains(Reason.UNKNOWN_CATCH);
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.POOR);
    assertThat(mm(totals.daily().get(0))).isCloseTo(8, within(0.1));
  }

  @Test
  void lateCatchKeepsTheTotalAndHidesItsTiming() {
    Totals totals =
        Bucket.every(10, 48)
            .level(rain(9, 9.2, 40))
            .noise(0.02)
            .entry(new Entry.LateCatch(header("l"), span(3, 10)))
            .totals();
    assertThat(qualities(totals.hourly().subList(3, 9))).containsOnly(Quality.MISSING);
    TotalRow last = totals.hourly().get(9);
    assertThat(mm(last)).isCloseTo(8, within(0.1));
    assertThat(last.accumulatedSinceMs()).hasValue(ms(3));
    assertThat(last.reasons()).contains(Reason.LATE_CATCH);
    assertThat(mm(totals.daily().get(0))).isCloseTo(8, within(0.1));
  }

  @Test
  void aDrySpellHasNoCatchWhateverTheLevelDoes() {
    Totals totals =
        Bucket.every(10, 48)
            .level(rain(3, 8, 0.8, 20, 22, 1))
            .entry(new Entry.DrySpell(header("d"), span(2, 10)))
            .totals();
    assertThat(sumMm(totals.hourly().subList(0, 19))).isEqualTo(0);
    assertThat(mm(totals.daily().get(0))).isCloseTo(2, within(0.05));
    assertThat(totals.hourly().get(5).quality()).isEqualTo(Quality.GOOD);
    assertThat(totals.hourly().get(5).reasons()).contains(Reason.DRY_SPELL);
  }

  @Test
  void theAnalystsEstimateReplacesTheGauge() {
    Totals totals =
        Bucket.every(10, 48)
            .level(rain(3, 8, 5))
            .entry(new Entry.Estimate(header("e"), span(2, 10), 3.4, "neighbour"))
            .totals();
    TotalRow last = totals.hourly().get(9);
    assertThat(mm(last)).isEqualTo(3.4);
    assertThat(last.accumulatedSinceMs()).hasValue(ms(2));
    assertThat(last.quality()).isEqualTo(Quality.ESTIMATE);
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.ESTIMATE);
    assertThat(mm(totals.daily().get(0))).isEqualTo(3.4);
  }

  @Test
  void anEstimateOfNothingNeedsNoAccumulation() {
    Totals totals =
        Bucket.every(10, 24)
            .level(rain(3, 8, 5))
            .entry(new Entry.Estimate(header("e"), span(2, 10), 0, "camera"))
            .totals();
    assertThat(qualities(totals.hourly().subList(2, 10))).containsOnly(Quality.ESTIMATE);
    assertThat(sumMm(totals.hourly())).isEqualTo(0);
  }

  @Test
  void aDayMayStartAtAnotherHour() {
    Totals totals = Bucket.every(10, 48).level(rain(4, 8, 1)).dayStartsAt(6).totals();
    assertThat(totals.daily().stream().map(d -> d.interval().fromMs()))
        .containsExactly(ms(-18), ms(6), ms(30));
    assertThat(mm(totals.daily().get(0))).isCloseTo(2, within(0.05));
    assertThat(mm(totals.daily().get(1))).isCloseTo(2, within(0.05));
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.POOR);
  }

  @Test
  void theFirstHourOfARecordThatStartsWithinItIsPoor() {
    Totals totals = Bucket.every(10, 30).silent(-1, 1.5).totals();
    assertThat(totals.hourly().get(0).interval().fromMs()).isEqualTo(ms(1));
    assertThat(totals.hourly().get(0).quality()).isEqualTo(Quality.POOR);
    assertThat(totals.hourly().get(0).reasons()).contains(Reason.RECORD_EDGE);
    assertThat(totals.hourly().get(1).quality()).isEqualTo(Quality.GOOD);
  }
}
