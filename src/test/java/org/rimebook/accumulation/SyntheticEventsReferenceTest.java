package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.fixture.Bucket.ms;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimebook.fixture.Bucket;

/**
 * Artificial events of constant rate between 0.6 and 30 mm/h, as the intercomparison of solid
 * precipitation instruments judged filters by (Nitu et al. 2018, WMO IOM Report 131), and a day of
 * drizzle. Readings of each wire carry white noise of 0.02 mm.
 */
class SyntheticEventsReferenceTest {

  private static final double FROM = 30.25;

  private static CatchSeries event(int minutes, double lastsH, double rateMmPerH) {
    return Bucket.every(minutes, 96)
        .noise(0.02)
        .level(Bucket.rain(FROM, FROM + lastsH, rateMmPerH))
        .result()
        .series();
  }

  private static double total(CatchSeries series) {
    return caught(series, ms(0), ms(96));
  }

  private static double caught(CatchSeries series, long fromMs, long toMs) {
    double sum = 0;
    for (int piece = 0; piece < series.size(); piece++) {
      long overlap = Math.min(toMs, series.toMs(piece)) - Math.max(fromMs, series.fromMs(piece));
      double share = overlap / (double) (series.toMs(piece) - series.fromMs(piece));
      sum += Math.max(0, share) * series.catchMm(piece);
    }
    return sum;
  }

  /** First and last instant at which it falls at half the rate or more. */
  private static long[] span(CatchSeries series, double rateMmPerH) {
    long first = Long.MAX_VALUE;
    long last = Long.MIN_VALUE;
    for (int piece = 0; piece < series.size(); piece++) {
      double hours = (series.toMs(piece) - series.fromMs(piece)) / 3_600_000.0;
      if (series.catchMm(piece) >= 0.5 * rateMmPerH * hours) {
        first = Math.min(first, series.fromMs(piece));
        last = Math.max(last, series.toMs(piece));
      }
    }
    return new long[] {first, last};
  }

  @ParameterizedTest
  @CsvSource({"1,4,0.6", "5,4,0.6", "10,4,0.6", "1,0.5,30", "5,0.5,30", "10,0.5,30"})
  void theAmountIsRecoveredWithinOnePercent(int minutes, double lastsH, double rate) {
    double truth = lastsH * rate;
    assertThat(total(event(minutes, lastsH, rate))).isCloseTo(truth, within(0.01 * truth));
  }

  @ParameterizedTest
  @CsvSource({"5,4,0.6", "10,4,0.6", "1,0.5,30", "5,0.5,30"})
  void startAndEndAreRecoveredWithinOneSamplingInterval(int minutes, double lastsH, double rate) {
    long[] span = span(event(minutes, lastsH, rate), rate);
    long intervalMs = minutes * 60_000L;
    assertThat(span[0]).isCloseTo(ms(FROM), within(intervalMs));
    assertThat(span[1]).isCloseTo(ms(FROM + lastsH), within(intervalMs));
  }

  @ParameterizedTest
  @CsvSource({"1", "5", "10"})
  void aDayOfDrizzleIsRecoveredWithinTenPercent(int minutes) {
    assertThat(total(event(minutes, 24, 0.05))).isCloseTo(1.2, within(0.12));
  }

  @Test
  void nothingFallsOutsideTheEvent() {
    CatchSeries series = event(1, 4, 0.6);
    assertThat(caught(series, ms(0), ms(FROM - 0.5))).isLessThan(0.01);
    assertThat(caught(series, ms(FROM + 4.5), ms(96))).isLessThan(0.01);
  }
}
