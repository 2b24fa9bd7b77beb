package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;

/** The estimator, tried on its own answer, says how honest it is. */
class RehearsedTest {

  private static final int DAYS = 50;

  /** Three hours of rain a day, each day at another time. */
  private static final DoubleUnaryOperator RAIN = rain();

  private static DoubleUnaryOperator rain() {
    double[] fromToRate = new double[3 * DAYS];
    for (int day = 0; day < DAYS; day++) {
      double from = 24 * day + 7 * day % 19;
      fromToRate[3 * day] = from;
      fromToRate[3 * day + 1] = from + 3;
      fromToRate[3 * day + 2] = 0.5 + 0.1 * (day % 7);
    }
    return Bucket.rain(fromToRate);
  }

  private static Estimate estimate(DoubleUnaryOperator level) {
    return Bucket.every(5, 24 * DAYS).noise(0.03).level(level).result().estimate();
  }

  private static Rehearsed rehearsed(Estimate estimate) {
    return estimate.learnt().orElseThrow().rehearsed();
  }

  /** A swing of other than a day is neither the sun's nor any wire's own: nothing takes it off. */
  private static Estimate swinging(double sizeMm, double periodH) {
    return estimate(
        hour ->
            RAIN.applyAsDouble(hour) + sizeMm * StrictMath.sin(2 * StrictMath.PI * hour / periodH));
  }

  @Test
  void aSwingThatNothingTakesOffWidensWhatIsSaidOfDays() {
    Estimate still = swinging(0, 60);
    Estimate swings = swinging(0.02, 60);
    assertThat(rehearsed(swings).dryFactor()).isGreaterThan(1.5 * rehearsed(still).dryFactor());
    assertThat(meanSquares(swings)[1]).isGreaterThan(2 * meanSquares(still)[1]);
  }

  /** One season has fifty days, and tells the size of their errors to a tenth or two. */
  @Test
  void errorsOfDaysAreAsLargeAsStatedThoughTheLevelSwings() {
    double square = 0;
    for (double periodH : new double[] {13, 29, 60}) {
      for (double sizeMm : new double[] {0.02, 0.04}) {
        double[] mm2 = meanSquares(swinging(sizeMm, periodH));
        assertThat(Math.sqrt(mm2[0] / mm2[1])).isBetween(0.6, 1.5);
        square += mm2[0] / mm2[1] / 6;
      }
    }
    assertThat(Math.sqrt(square)).isBetween(0.8, 1.2);
  }

  /** Mean square of the errors of days, and mean of their stated variances [mm²]. */
  private static double[] meanSquares(Estimate estimate) {
    CatchSeries series = estimate.series();
    double[] mm2 = new double[2];
    for (int day = 0; day < DAYS; day++) {
      long fromMs = Bucket.ms(24 * day);
      long toMs = Bucket.ms(24 * day + 24);
      double errorMm = RAIN.applyAsDouble(24 * day) - RAIN.applyAsDouble(24 * day + 24);
      for (int piece = 0; piece < series.size(); piece++) {
        boolean inDay = series.fromMs(piece) >= fromMs && series.toMs(piece) <= toMs;
        errorMm += inDay ? series.catchMm(piece) : 0;
      }
      mm2[0] += errorMm * errorMm / DAYS;
      mm2[1] += series.varianceMm2(fromMs, toMs) / DAYS;
    }
    return mm2;
  }

  @Test
  void aSeasonWithFewWetDaysIsNotJudgedByThem() {
    Estimate dry = estimate(Bucket.rain(100, 105, 1, 400, 402, 2));
    assertThat(rehearsed(dry).dryFactor()).isEqualTo(1);
  }

  @Test
  void howFarTheErrorsOfTwoLevelsAreTheSameStays() {
    boolean[] within = {false, true, true, false};
    WetSpells.Catch caught = new WetSpells.Catch(new double[4], new double[5], within);
    CatchSeries.Ends stated = new CatchSeries.Ends(0.04, 0.09, 0.5, 0.01);
    CatchSeries.Ends ends = new Rehearsed(4, 0.25).ends(1, stated, caught);
    assertThat(ends.startMm2()).isEqualTo(0.25 * 0.04);
    assertThat(ends.endMm2()).isEqualTo(4 * 0.09);
    assertThat(correlation(ends)).isEqualTo(correlation(stated));
    assertThat(ends.doubtMm()).isEqualTo(0.01);
  }

  private static double correlation(CatchSeries.Ends ends) {
    return ends.gain() * Math.sqrt(ends.endMm2() / ends.startMm2());
  }
}
