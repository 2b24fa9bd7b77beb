package org.rimebook.practice;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.station.Interval;

/**
 * Storms whose water is halved again and again down to two or three minutes, each half getting a
 * random share and sometimes nothing: a random multiplicative cascade (the form is common
 * practice). Rates differ by orders of magnitude within one storm, and a storm has dry minutes
 * inside.
 */
public final class CascadeStorms {

  private static final long HOUR_MS = 3_600_000L;
  private static final double HOURS_PER_WEEK = 168;
  private static final long SHORTEST_MS = 180_000;
  private static final double ALL_IN_ONE_HALF = 0.06;
  private static final double DRIZZLE_MM_PER_HOUR = 0.06;

  private final Interval span;
  private final StormClimate climate;
  private final RandomGenerator chance;
  private final List<Pulse> pulses = new ArrayList<>();

  private CascadeStorms(Interval span, StormClimate climate, long seed) {
    this.span = span;
    this.climate = climate;
    this.chance = Chance.of(seed, "cascade storms");
  }

  /** The precipitation of a season; of the weather only its span counts. */
  public static Precipitation simulated(Weather weather, StormClimate climate, long seed) {
    CascadeStorms storms = new CascadeStorms(weather.sampling().span(), climate, seed);
    double betweenHours = HOURS_PER_WEEK / climate.stormsPerWeek();
    long at = storms.span.fromMs() + storms.exponentialMs(betweenHours);
    while (at < storms.span.toMs()) {
      long to =
          Math.min(
              storms.span.toMs(), at + HOUR_MS / 4 + storms.exponentialMs(climate.meanHours()));
      storms.storm(new Interval(at, to));
      at = to + storms.exponentialMs(betweenHours);
    }
    return Precipitation.of(storms.pulses);
  }

  private void storm(Interval interval) {
    double hours = (double) interval.lengthMs() / HOUR_MS;
    boolean drizzle = chance.nextDouble() < climate.drizzleShare();
    if (drizzle) {
      pulses.add(Pulse.atRate(interval, DRIZZLE_MM_PER_HOUR));
    } else {
      double rate = 0.05 - 0.7 * climate.meanMmPerHour() * StrictMath.log(1 - chance.nextDouble());
      split(interval, rate * hours);
    }
  }

  private void split(Interval interval, double mm) {
    if (interval.lengthMs() < 2 * SHORTEST_MS) {
      pulses.add(new Pulse(interval, mm));
      return;
    }
    long middle = (interval.fromMs() + interval.lengthMs() / 2) / 1000 * 1000;
    double share = 0.5 + 0.35 * (2 * chance.nextDouble() - 1);
    if (chance.nextDouble() < ALL_IN_ONE_HALF) {
      share = chance.nextBoolean() ? 1 : 0;
    }
    if (share > 0) {
      split(new Interval(interval.fromMs(), middle), share * mm);
    }
    if (share < 1) {
      split(new Interval(middle, interval.toMs()), (1 - share) * mm);
    }
  }

  private long exponentialMs(double meanHours) {
    return (long) (-meanHours * HOUR_MS * StrictMath.log(1 - chance.nextDouble()) / 1000) * 1000;
  }
}
