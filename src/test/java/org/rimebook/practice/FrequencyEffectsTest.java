package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Interval;

class FrequencyEffectsTest {

  private static double[] spoilt(FrequencyEffect effect, int wire) {
    Surroundings around = Trial.surroundings();
    double[] values = new double[around.sampling().size()];
    Arrays.fill(values, 2000.123);
    effect.apply(around, wire, values);
    return values;
  }

  @Test
  void aCounterGivesWholeSteps() {
    assertThat(spoilt(new Quantisation(0.05), 0)).containsOnly(40002 * 0.05);
    assertThat(spoilt(new Quantisation(1), 0)).containsOnly(2000);
  }

  @Test
  void spikesComeAboutAsOftenAsAsked() {
    long struck = Arrays.stream(spoilt(new Spikes(5, 100), 0)).filter(f -> f != 2000.123).count();
    assertThat(struck).isBetween(25L, 80L);
  }

  @Test
  void aDeadWireJumpsThenIsSilentThenIsRepaired() {
    Interval span = Trial.CLOCK.span("2024-02-27T00:00", "2024-03-02T00:00");
    double[] values = spoilt(new DeadWire(2, span, 6 * 3_600_000L), 2);
    Sampling sampling = Trial.weather().sampling();
    int jumps = 0;
    for (int i = 0; i < values.length; i++) {
      long inMs = sampling.stampMs(i) - span.fromMs();
      if (!span.contains(sampling.stampMs(i))) {
        assertThat(values[i]).isEqualTo(2000.123);
      } else if (inMs >= 6 * 3_600_000L) {
        assertThat(values[i]).isNaN();
      } else {
        jumps += Math.abs(values[i] - 2000.123) > 1 ? 1 : 0;
      }
    }
    assertThat(jumps).isBetween(5, 30);
    assertThat(spoilt(new DeadWire(2, span, 0), 1)).containsOnly(2000.123);
  }

  @Test
  void theInventedCalibrationsAreNearlyIdealStrings() {
    Trial.sheet().wires().stream()
        .flatMap(
            wire -> InventedGauge.replaced(wire, Trial.TEN_DAYS.from()).calibrations().stream())
        .forEach(
            c ->
                assertThat(c.aCmPerHz() / (2 * c.f0Hz() * c.bCmPerHz2()))
                    .isCloseTo(1, within(0.03)));
  }
}
