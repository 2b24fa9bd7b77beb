package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

/** What the air temperature does to each wire, learnt and stated. */
class WireTemperatureTest {

  private static final double HOURS = 30 * 24;

  /** Lamb, Persaud & Mouradian 2009, AMS 89th annual meeting. */
  private static final double PER_DEG_C = -4e-5;

  private static final DoubleUnaryOperator AIR_C =
      hour -> -5 + 8 * Math.sin(2 * Math.PI * (hour - 9) / 24) + 6 * Math.sin(hour / 40);

  private static final DoubleUnaryOperator RAIN = Bucket.rain(100, 112, 0.8, 333, 339, 1.5);
  private static final double FALLEN_MM = 12 * 0.8 + 6 * 1.5;

  /** Right at 10 °C. */
  private static Bucket gauge() {
    return Bucket.every(5, HOURS)
        .noise(0.02)
        .weather(AIR_C, 2)
        .level(
            hour ->
                (250 + RAIN.applyAsDouble(hour))
                    * (1 + PER_DEG_C * (AIR_C.applyAsDouble(hour) - 10)));
  }

  private static double totalMm(SeasonResult result) {
    return result.totals(Resolution.HUNDREDTH).seasonUnits().orElseThrow() / 100.0;
  }

  @Test
  void whatTemperatureDoesIsLearntOfEachWire() {
    assertThat(gauge().result().wireTemperatures())
        .hasSize(3)
        .allSatisfy(
            wire -> {
              Fitted learnt = wire.perDegC().orElseThrow();
              assertThat(learnt.value())
                  .isCloseTo(PER_DEG_C, within(4 * learnt.standardUncertainty()));
              assertThat(learnt.standardUncertainty()).isBetween(1e-8, 5e-6);
              assertThat(wire.dryChanges()).isBetween(500, 720);
              assertThat(wire.statedPerDegC()).isNaN();
            });
  }

  @Test
  void drySpellsKeepClearOfWhatFell() {
    Interval fell = Bucket.span(101, 111);
    assertThat(gauge().result().drySpells())
        .isNotEmpty()
        .noneMatch(fell::overlaps)
        .allMatch(spell -> spell.lengthMs() >= 3 * 3_600_000);
  }

  @Test
  void aRightCoefficientStatedGivesTheCatchAndNoneIsLearnt() {
    SeasonResult result = gauge().states(PER_DEG_C).result();
    assertThat(totalMm(result)).isCloseTo(FALLEN_MM, within(0.005 * FALLEN_MM));
    assertThat(result.estimate().learnt().orElseThrow().drift().temperaturePerDegC()).isEmpty();
    int row = 2000;
    assertThat(result.depths().depthMm(0, row))
        .isCloseTo(250 + RAIN.applyAsDouble(row / 12.0), within(0.2));
  }

  @Test
  void whatIsStatedCountsToWhatTheReadingsShow() {
    assertThat(gauge().states(-1e-5).result().wireTemperatures())
        .allSatisfy(
            wire -> {
              assertThat(wire.statedPerDegC()).isEqualTo(-1e-5);
              assertThat(wire.perDegC().orElseThrow().value()).isCloseTo(PER_DEG_C, within(2e-6));
            });
  }

  @Test
  void switchedOffNothingIsTakenOffAndNothingLearnt() {
    SeasonResult off = gauge().states(0).result();
    int row = 2000;
    double load = 250 + RAIN.applyAsDouble(row / 12.0);
    double read = load * (1 + PER_DEG_C * (AIR_C.applyAsDouble(row / 12.0) - 10));
    assertThat(off.depths().depthMm(0, row)).isCloseTo(read, within(0.1));
    assertThat(off.estimate().learnt().orElseThrow().drift().temperaturePerDegC()).isEmpty();
  }

  @Test
  void withoutAThermometerNothingIsLearntAndNothingTakenOff() {
    SeasonResult bare = Bucket.every(5, HOURS).level(RAIN).states(PER_DEG_C).result();
    assertThat(bare.calibrations().alerts())
        .hasSize(3)
        .allMatch(alert -> alert.contains("has no effect without"));
    assertThat(bare.wireTemperatures()).allMatch(wire -> wire.perDegC().isEmpty());
    assertThat(totalMm(bare)).isCloseTo(FALLEN_MM, within(0.01 * FALLEN_MM));
  }
}
