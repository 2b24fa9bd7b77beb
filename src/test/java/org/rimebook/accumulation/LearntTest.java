package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;

/** What the estimator says it learnt is what the level was made with. */
class LearntTest {

  private static final double HOURS = 30 * 24;

  private static final DoubleUnaryOperator AIR_C =
      hour -> -5 + 8 * Math.sin(2 * Math.PI * (hour - 9) / 24) + 6 * Math.sin(hour / 40);

  private static final DoubleUnaryOperator RAIN =
      Bucket.rain(100, 112, 0.8, 333, 339, 1.5, 500, 520, 0.4);

  private static Bucket bucket() {
    return Bucket.every(5, HOURS).noise(0.02);
  }

  private static Learnt learnt(Bucket bucket) {
    return bucket.result().estimate().learnt().orElseThrow();
  }

  private static DoubleUnaryOperator read(double perDegC) {
    return hour -> (250 + RAIN.applyAsDouble(hour)) * (1 + perDegC * AIR_C.applyAsDouble(hour));
  }

  private static void assertWithin(Fitted fitted, double truth) {
    assertThat(fitted.value()).isCloseTo(truth, within(2 * fitted.standardUncertainty()));
  }

  /** 0.004 % a degree: Lamb, Persaud & Mouradian 2009, AMS 89th annual meeting. */
  @Test
  void theTemperatureCoefficientComesBackWithinItsUncertainty() {
    DriftLaw law = learnt(bucket().weather(AIR_C, 2).level(read(-4e-5))).drift();
    Fitted coefficient = law.temperaturePerDegC().orElseThrow();
    assertWithin(coefficient, -4e-5);
    assertThat(coefficient.standardUncertainty()).isBetween(1e-8, 0.1 * 4e-5);
    assertThat(law.dryHours()).isBetween(550, 680);
  }

  @Test
  void aReadingThatDoesNotFollowTheTemperatureHasNoCoefficient() {
    DriftLaw law = learnt(bucket().weather(AIR_C, 2).level(read(0))).drift();
    assertWithin(law.temperaturePerDegC().orElseThrow(), 0);
  }

  @Test
  void withoutAThermometerThereIsNoCoefficient() {
    assertThat(learnt(bucket().level(read(-4e-5))).drift().temperaturePerDegC()).isEmpty();
  }

  @Test
  void evaporationComesBackWithinItsUncertainty() {
    Fitted evaporation =
        learnt(bucket().level(hour -> 300 + RAIN.applyAsDouble(hour) - 0.4 * hour / 24))
            .drift()
            .evaporationMmPerD()
            .orElseThrow();
    assertWithin(evaporation, 0.4);
    assertThat(evaporation.standardUncertainty()).isBetween(1e-4, 0.05);
  }

  /** The level is the mean of three wires with white noise of 0.06 mm each. */
  @Test
  void theNoiseOfTheMeanIsThatOfAWireOverTheRootOfThree() {
    Learnt learnt = learnt(Bucket.every(5, HOURS).noise(0.06).level(RAIN));
    assertThat(learnt.nodeNoiseMm()).isCloseTo(0.06 / Math.sqrt(3), within(0.003));
    assertThat(learnt.noiseCorrelation()).isBetween(1.0, 1.3);
  }

  @Test
  void tooShortARecordTeachesNoDriftAndTakesNoneOff() {
    Bucket day = Bucket.every(5, 24).noise(0.02).weather(AIR_C, 2);
    DriftLaw law = learnt(day).drift();
    assertThat(law.dryHours()).isLessThan(24);
    assertThat(law.temperaturePerDegC()).isEmpty();
    assertThat(law.evaporationMmPerD()).isEmpty();
    assertThat(law.departures()).isEmpty();
    assertThat(taken(day, 3, 20).totalMm()).isZero();
  }

  private static DriftTaken taken(Bucket bucket, double fromHour, double toHour) {
    return bucket.result().estimate().judgement().taken(Bucket.ms(fromHour), Bucket.ms(toHour));
  }

  @Test
  void theDriftTakenOffIsWhatTheTemperatureAdded() {
    Bucket bucket =
        bucket().weather(AIR_C, 2).level(hour -> 250 * (1 - 4e-5 * AIR_C.applyAsDouble(hour)));
    double truthMm = -4e-5 * 250 * (AIR_C.applyAsDouble(207) - AIR_C.applyAsDouble(195));
    assertThat(Math.abs(truthMm)).isGreaterThan(0.1);
    assertThat(taken(bucket, 195, 207).totalMm()).isCloseTo(truthMm, within(0.02));
    assertThat(taken(bucket, 195, 207).temperatureMm()).isCloseTo(truthMm, within(0.02));
  }

  @Test
  void partsOfTheVarianceAddUpToIt() {
    CatchSeries series = bucket().level(RAIN).result().series();
    CatchVariance parts = series.variance(Bucket.ms(102), Bucket.ms(108));
    assertThat(parts.totalMm2())
        .isEqualTo(series.varianceMm2(Bucket.ms(102), Bucket.ms(108)))
        .isEqualTo(parts.levelsMm2() + parts.wanderingMm2() + parts.commonMm2());
    assertThat(parts.levelsMm2()).isPositive();
  }
}
