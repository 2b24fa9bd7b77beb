package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/** What moves a level while nothing falls isn't catch, and doesn't spoil the catch beside it. */
class DriftTest {

  private static final double HOURS = 30 * 24;

  /** Reading falls 0.004 % a degree (Lamb, Persaud & Mouradian 2009, AMS 89th annual meeting). */
  private static final double PER_DEG_C = -4e-5;

  private static final DoubleUnaryOperator AIR_C =
      hour -> -5 + 8 * Math.sin(2 * Math.PI * (hour - 9) / 24) + 6 * Math.sin(hour / 40);

  private static final DoubleUnaryOperator RAIN =
      Bucket.rain(100, 112, 0.8, 333, 339, 1.5, 500, 520, 0.4);

  private static final double FALLEN_MM = 12 * 0.8 + 6 * 1.5 + 20 * 0.4;

  private static double total(Totals totals) {
    return totals.seasonUnits().orElseThrow() / 100.0;
  }

  private static double worstDayMm(Totals totals) {
    double worst = 0;
    for (TotalRow day : totals.daily()) {
      long from = day.interval().fromMs();
      double start = (from - Bucket.ms(0)) / 3_600_000.0;
      double truth = RAIN.applyAsDouble(start + 24) - RAIN.applyAsDouble(start);
      worst = Math.max(worst, Math.abs(day.catchUnits().orElseThrow() / 100.0 - truth));
    }
    return worst;
  }

  private static DoubleUnaryOperator read(double loadMm) {
    return hour ->
        (loadMm + RAIN.applyAsDouble(hour)) * (1 + PER_DEG_C * AIR_C.applyAsDouble(hour));
  }

  @Test
  void aReadingThatFollowsTheTemperatureLosesNoCatchAndMakesNone() {
    Totals totals = Bucket.every(5, HOURS).noise(0.02).weather(AIR_C, 2).level(read(250)).totals();
    assertThat(total(totals)).isCloseTo(FALLEN_MM, within(0.005 * FALLEN_MM));
    assertThat(worstDayMm(totals)).isLessThan(0.08);
  }

  @Test
  void withoutAThermometerTheSameReadingIsWorseButNotWrong() {
    Totals totals = Bucket.every(5, HOURS).noise(0.02).level(read(250)).totals();
    assertThat(total(totals)).isCloseTo(FALLEN_MM, within(0.03 * FALLEN_MM));
  }

  @Test
  void evaporationIsNotTakenFromTheCatch() {
    Totals totals =
        Bucket.every(5, HOURS)
            .noise(0.02)
            .level(hour -> RAIN.applyAsDouble(hour) - 0.4 * hour / 24)
            .totals();
    assertThat(total(totals)).isCloseTo(FALLEN_MM, within(0.02 * FALLEN_MM));
  }

  @Test
  void aBucketThatOnlyEvaporatesCaughtNothing() {
    Totals totals =
        Bucket.every(5, HOURS).noise(0.02).level(hour -> 300 - 0.4 * hour / 24).totals();
    assertThat(total(totals)).isLessThan(0.15);
  }

  @Test
  void statedUncertaintiesCoverTheErrorsOfDays() {
    Totals totals = Bucket.every(1, HOURS).noise(0.05).weather(AIR_C, 2).level(read(100)).totals();
    for (TotalRow day : totals.daily()) {
      double start = (day.interval().fromMs() - Bucket.ms(0)) / 3_600_000.0;
      double truth = RAIN.applyAsDouble(start + 24) - RAIN.applyAsDouble(start);
      double error = day.catchUnits().orElseThrow() / 100.0 - truth;
      assertThat(Math.abs(error)).isLessThan(4 * day.uncertaintyMm().orElseThrow());
    }
  }
}
