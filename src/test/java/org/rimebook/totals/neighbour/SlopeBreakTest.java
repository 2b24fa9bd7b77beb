package org.rimebook.totals.neighbour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class SlopeBreakTest {

  private static final int DAYS = 180;
  private static final int BREAK = 100;

  private static SlopeBreak found(long seed, IntToDoubleFunction ratio) {
    Random random = new Random(seed);
    double[] other = random.doubles(DAYS, 0, 8).map(mm -> mm < 5 ? 0 : mm).toArray();
    List<DayCatch> own =
        Days.list(
            DAYS,
            day ->
                other[day]
                    * ratio.applyAsDouble(day)
                    * StrictMath.exp(0.3 * random.nextGaussian()));
    return Comparison.of(own, List.of(Days.list(DAYS, day -> other[day])), ZoneOffset.UTC)
        .slopeBreak()
        .orElseThrow();
  }

  @Test
  void aBreakIsFoundWithItsPlaceAndTheFactorThatMendsIt() {
    int called = 0;
    for (long seed = 1; seed <= 40; seed++) {
      SlopeBreak found = found(seed, day -> day < BREAK ? 1 : 0.6);
      called += found.significant() ? 1 : 0;
      double day = (found.atMs() - Days.START_MS) / (double) Days.DAY_MS;
      assertThat(day).isCloseTo(BREAK, within(25.0));
      assertThat(found.factor()).isCloseTo(1 / 0.6, within(0.35));
    }
    assertThat(called).isEqualTo(40);
  }

  /** Pettitt's approximation is known to be cautious; 5 % is the most that may be called. */
  @Test
  void aStraightCurveIsRarelyCalledBroken() {
    int called = 0;
    for (long seed = 1; seed <= 400; seed++) {
      called += found(seed, day -> 0.8).significant() ? 1 : 0;
    }
    assertThat(called).isBetween(1, 20);
  }

  @Test
  void stepsAreOfAboutTheSameCatchAndNoMoreThanForty() {
    SlopeBreak found = found(5, day -> 1);
    assertThat(found.steps()).isBetween(30, SlopeBreak.MOST);
    assertThat(found.leastStepMm()).isGreaterThanOrEqualTo(SlopeBreak.LEAST_MM);
  }

  @Test
  void littlePrecipitationIsNotTested() {
    List<DayCatch> dry = Days.list(DAYS, day -> day % 30 == 0 ? 6 : 0);
    assertThat(Comparison.of(dry, List.of(dry), ZoneOffset.UTC).slopeBreak()).isEmpty();
  }
}
