package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Interval;

class PrecipitationTest {

  private static final long HOUR_MS = 3_600_000L;

  private static Interval hours(long from, long to) {
    return new Interval(from * HOUR_MS, to * HOUR_MS);
  }

  @Test
  void aRateFallsEvenlyOverItsInterval() {
    Precipitation two = Precipitation.of(List.of(Pulse.atRate(hours(1, 5), 30)));
    assertThat(two.accumulatedMm(HOUR_MS)).isZero();
    assertThat(two.accumulatedMm(2 * HOUR_MS)).isEqualTo(30);
    assertThat(two.accumulatedMm(2 * HOUR_MS + HOUR_MS / 2)).isEqualTo(45);
    assertThat(two.accumulatedMm(9 * HOUR_MS)).isEqualTo(120);
  }

  @Test
  void pulsesThatOverlapAddUp() {
    Precipitation both =
        Precipitation.of(List.of(new Pulse(hours(2, 6), 8), new Pulse(hours(0, 4), 4)));
    assertThat(both.amountMm(hours(0, 2))).isEqualTo(2);
    assertThat(both.amountMm(hours(2, 4))).isEqualTo(6);
    assertThat(both.amountMm(hours(0, 10))).isEqualTo(12);
  }

  @Test
  void aDryIntervalTakesOutWhatFellInItAndNoMore() {
    Precipitation left =
        Precipitation.of(List.of(new Pulse(hours(0, 10), 10))).without(hours(3, 5));
    assertThat(left.amountMm(hours(3, 5))).isZero();
    assertThat(left.amountMm(hours(0, 3))).isEqualTo(3, within(1e-12));
    assertThat(left.amountMm(hours(5, 10))).isEqualTo(5, within(1e-12));
  }

  @Test
  void aCapHoldsBackWhatFallsOnItUntilItSlidesIn() {
    Precipitation fell = Precipitation.of(List.of(new Pulse(hours(0, 10), 10)));
    Precipitation entered = new Cap(hours(2, 6), Duration.ofHours(1)).through(fell);
    assertThat(entered.amountMm(hours(2, 6))).isZero();
    assertThat(entered.amountMm(hours(6, 7))).isEqualTo(5, within(1e-12));
    assertThat(entered.amountMm(hours(0, 10))).isEqualTo(10, within(1e-12));
  }

  @Test
  void aPulseWithoutTimeIsRefused() {
    assertThatThrownBy(() -> new Pulse(hours(1, 1), 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
