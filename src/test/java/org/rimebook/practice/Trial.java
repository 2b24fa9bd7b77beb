package org.rimebook.practice;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.WindShield;

/** A gauge and weather for tests, short enough to be made many times. */
final class Trial {

  static final StationClock CLOCK = new StationClock(ZoneOffset.ofHours(-3));
  static final Interval TEN_DAYS = CLOCK.span("2024-02-25T03:00", "2024-03-06T03:00");
  static final Climate MILD = new Climate(8, 8, 5, 4, 5);
  static final StormClimate WET = new StormClimate(7, 9, 1.5, 0.2);
  static final long SEED = 11;

  private Trial() {}

  static StationSheet sheet() {
    return InventedGauge.sheet(
        new InventedGauge.Place("Trial Meadow", 47, 9, 900, CLOCK.offset()),
        LocalTime.of(6, 0),
        2,
        WindShield.OTHER,
        InventedGauge.wires("north", "east", "west"));
  }

  static Weather weather(Duration step, long seed) {
    return Weather.simulated(Sampling.every(step, TEN_DAYS), CLOCK.offset(), MILD, seed);
  }

  static Weather weather() {
    return weather(Duration.ofMinutes(10), SEED);
  }

  static Surroundings surroundings() {
    return new Surroundings(sheet(), weather(), SEED);
  }

  /** What an effect adds to a constant depth for one wire [mm]. */
  static double[] change(DepthEffect effect, int wire, double depthMm) {
    Surroundings around = surroundings();
    double[] values = new double[around.sampling().size()];
    Arrays.fill(values, depthMm);
    effect.apply(around, wire, values);
    for (int i = 0; i < values.length; i++) {
      values[i] -= depthMm;
    }
    return values;
  }
}
