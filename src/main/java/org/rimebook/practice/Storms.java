package org.rimebook.practice;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.station.Interval;

/**
 * Storms drawn from a seed: they start more often under an unsettled sky, swell and fade, flicker
 * from one ten minutes to the next, and bring less water as snow.
 */
public final class Storms {

  /** Half of the precipitation is snow at this air temperature [°C]; Jennings et al. 2018. */
  private static final double SNOW_BELOW_DEG_C = 1.0;

  private static final double SNOW_SHARE_OF_RAIN_RATE = 0.6;
  private static final double DRIZZLE_MM_PER_HOUR = 0.05;
  private static final long HOUR_MS = 3_600_000L;
  private static final long PULSE_MS = 600_000L;
  private static final double HOURS_PER_WEEK = 168;

  private final Weather weather;
  private final StormClimate climate;
  private final RandomGenerator chance;
  private final List<Pulse> pulses = new ArrayList<>();

  private Storms(Weather weather, StormClimate climate, long seed) {
    this.weather = weather;
    this.climate = climate;
    this.chance = Chance.of(seed, "storms");
  }

  /** The precipitation of a season. */
  public static Precipitation simulated(Weather weather, StormClimate climate, long seed) {
    Storms storms = new Storms(weather, climate, seed);
    Interval span = weather.sampling().span();
    long lastStart = span.toMs() - HOUR_MS;
    long hour = span.fromMs() + 6 * HOUR_MS;
    while (hour < lastStart) {
      hour = HOUR_MS + (storms.starts(hour) ? storms.storm(hour, span.toMs()) : hour);
    }
    return Precipitation.of(storms.pulses);
  }

  /** Three times the square of the index has a mean near 1, so the weekly count holds. */
  private boolean starts(long hourMs) {
    double unsettled = weather.unsettled(weather.sampling().indexAt(hourMs));
    double mean = climate.stormsPerWeek() / HOURS_PER_WEEK;
    return chance.nextDouble() < 3 * mean * unsettled * unsettled;
  }

  private long storm(long hourMs, long seasonEndMs) {
    long start = hourMs + (long) (chance.nextDouble() * HOUR_MS / 1000) * 1000;
    double hours = 0.3 - (climate.meanHours() - 0.3) * StrictMath.log(1 - chance.nextDouble());
    int count = Math.max(1, (int) (hours * HOUR_MS / PULSE_MS));
    boolean drizzle = chance.nextDouble() < climate.drizzleShare();
    double peak = 2 * climate.meanMmPerHour() * new GammaDistribution(chance, 2, 0.5).sample();
    double flicker = 0;
    for (int i = 0; i < count; i++) {
      flicker = 0.8 * flicker + 0.6 * chance.nextGaussian();
      double swell = StrictMath.sin(StrictMath.PI * (i + 0.5) / count);
      double rate =
          drizzle ? DRIZZLE_MM_PER_HOUR : peak * swell * StrictMath.exp(0.5 * flicker - 0.3);
      long from = start + i * PULSE_MS;
      if (rate > 0.01 && from + PULSE_MS <= seasonEndMs) {
        Interval interval = new Interval(from, from + PULSE_MS);
        pulses.add(Pulse.atRate(interval, rate * phaseShare(from)));
      }
    }
    return start + count * PULSE_MS;
  }

  private double phaseShare(long epochMs) {
    int index = weather.sampling().indexAt(epochMs);
    return weather.airTemperatureDegC(index) < SNOW_BELOW_DEG_C ? SNOW_SHARE_OF_RAIN_RATE : 1;
  }
}
