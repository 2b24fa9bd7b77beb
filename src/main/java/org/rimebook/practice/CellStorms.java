package org.rimebook.practice;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.station.Interval;

/**
 * Storms made of rain cells, after the Bartlett–Lewis process: storms start at any time whatever
 * the sky, cells follow each other at random while a storm lasts, overlap, and bring a constant
 * rate each (Rodriguez-Iturbe, Cox & Isham 1987, Proc. R. Soc. A 410, 269, from memory). Nothing in
 * it is alike to {@link Storms}.
 */
public final class CellStorms {

  private static final double HOUR_MS = 3_600_000;
  private static final double HOURS_PER_WEEK = 168;
  private static final double CELL_HOURS = 0.7;
  private static final double CELLS_PER_HOUR = 1.4;
  private static final double SHORTEST_CELL_HOURS = 0.05;

  private final Interval span;
  private final StormClimate climate;
  private final RandomGenerator chance;
  private final List<Pulse> pulses = new ArrayList<>();

  private CellStorms(Interval span, StormClimate climate, long seed) {
    this.span = span;
    this.climate = climate;
    this.chance = Chance.of(seed, "cell storms");
  }

  /** The precipitation of a season; of the weather only its span counts. */
  public static Precipitation simulated(Weather weather, StormClimate climate, long seed) {
    CellStorms storms = new CellStorms(weather.sampling().span(), climate, seed);
    double betweenHours = HOURS_PER_WEEK / climate.stormsPerWeek();
    double hour = storms.exponential(betweenHours);
    while (hour * HOUR_MS < storms.span.lengthMs()) {
      hour += storms.storm(hour) + storms.exponential(betweenHours);
    }
    return Precipitation.of(storms.pulses);
  }

  /** Adds a storm and tells how long it lasts [h]. */
  private double storm(double startHour) {
    double hours = 0.5 + exponential(climate.meanHours());
    if (chance.nextDouble() < climate.drizzleShare()) {
      add(startHour, hours, 0.02 + 0.08 * chance.nextDouble());
      return hours;
    }
    double meanRate = exponential(0.7 * climate.meanMmPerHour()) / (CELL_HOURS * CELLS_PER_HOUR);
    for (double at = 0; at < hours; at += exponential(1 / CELLS_PER_HOUR)) {
      double cellHours = SHORTEST_CELL_HOURS + exponential(CELL_HOURS);
      add(startHour + at, cellHours, 0.05 + exponential(meanRate));
    }
    return hours;
  }

  private void add(double startHour, double hours, double mmPerHour) {
    long from = span.fromMs() + seconds(startHour);
    long to = Math.min(span.toMs(), from + seconds(hours));
    if (to > from) {
      pulses.add(Pulse.atRate(new Interval(from, to), mmPerHour));
    }
  }

  private static long seconds(double hours) {
    return (long) (hours * HOUR_MS / 1000) * 1000;
  }

  private double exponential(double mean) {
    return -mean * StrictMath.log(1 - chance.nextDouble());
  }
}
