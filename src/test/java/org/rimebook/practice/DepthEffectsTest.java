package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Interval;

class DepthEffectsTest {

  private static final double MS_PER_DAY = 86_400_000.0;

  @Test
  void tiltShowsOnEachWireAndCancelsInTheirMean() {
    Tilt tilt = new Tilt(0.01, 75);
    double north = Trial.change(tilt, 0, 400)[0];
    double east = Trial.change(tilt, 1, 400)[0];
    double west = Trial.change(tilt, 2, 400)[0];
    assertThat(east).isGreaterThan(2);
    assertThat(west).isLessThan(-3);
    assertThat(north + east + west).isCloseTo(0, within(1e-9));
  }

  @Test
  void theNorthernWireMovesLeastInTheSun() {
    SunDrift drift = new SunDrift(1, 1_800_000);
    double north = StatUtils.max(Trial.change(drift, 0, 200));
    assertThat(north).isPositive().isLessThan(0.4 * StatUtils.max(Trial.change(drift, 1, 200)));
    assertThat(north).isLessThan(0.4 * StatUtils.max(Trial.change(drift, 2, 200)));
  }

  @Test
  void theSunMovesNothingAtNight() {
    double[] moved = Trial.change(new SunDrift(1, 1_800_000), 1, 200);
    Sampling sampling = Trial.weather().sampling();
    Interval night = Trial.CLOCK.span("2024-02-28T02:00", "2024-02-28T05:00");
    for (int i = 0; i < moved.length; i++) {
      if (night.contains(sampling.stampMs(i))) {
        assertThat(moved[i]).isLessThan(0.01);
      }
    }
  }

  @Test
  void noiseGrowsWithTheWind() {
    double[] noise = Trial.change(new WindNoise(0.02, 0.5, 0.3, 300_000), 0, 200);
    Weather weather = Trial.weather();
    double calm = 0;
    double windy = 0;
    int calmCount = 0;
    int windyCount = 0;
    for (int i = 0; i < noise.length; i++) {
      if (weather.windMs(i) < 3) {
        calm += noise[i] * noise[i];
        calmCount++;
      } else if (weather.windMs(i) > 6) {
        windy += noise[i] * noise[i];
        windyCount++;
      }
    }
    assertThat(StrictMath.sqrt(calm / calmCount)).isBetween(0.02, 0.07);
    assertThat(StrictMath.sqrt(windy / windyCount)).isGreaterThan(0.2);
  }

  @Test
  void theCommonShareOfNoiseIsItsCorrelationBetweenWires() {
    WindNoise noise = new WindNoise(0.1, 0, 0.5, 60_000);
    double correlation =
        new PearsonsCorrelation()
            .correlation(Trial.change(noise, 0, 200), Trial.change(noise, 2, 200));
    assertThat(correlation).isCloseTo(0.5, within(0.08));
  }

  @Test
  void onlyTheCreepingWireCreepsAndOnlyInItsSpan() {
    Interval span = Trial.CLOCK.span("2024-02-27T00:00", "2024-03-02T00:00");
    DriftingWire creep = new DriftingWire(1, span, -0.5);
    assertThat(Trial.change(creep, 0, 200)).containsOnly(0);
    double[] changed = Trial.change(creep, 1, 200);
    Sampling sampling = Trial.weather().sampling();
    for (int i = 0; i < changed.length; i++) {
      double days = (sampling.stampMs(i) - span.fromMs()) / MS_PER_DAY;
      double expected = span.contains(sampling.stampMs(i)) ? -0.5 * days : 0;
      assertThat(changed[i]).isCloseTo(expected, within(1e-9));
    }
  }

  @Test
  void aTouchShakesAllWiresAlike() {
    Rattle touch = new Rattle(Trial.CLOCK.span("2024-02-27T00:00", "2024-02-27T12:00"), 2);
    assertThat(Trial.change(touch, 0, 200)).isEqualTo(Trial.change(touch, 2, 200));
    assertThat(StatUtils.max(Trial.change(touch, 0, 200))).isGreaterThan(1);
  }
}
