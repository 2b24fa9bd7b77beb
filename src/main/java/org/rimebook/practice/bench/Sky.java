package org.rimebook.practice.bench;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.practice.CascadeStorms;
import org.rimebook.practice.CellStorms;
import org.rimebook.practice.Precipitation;
import org.rimebook.practice.Pulse;
import org.rimebook.practice.StormClimate;
import org.rimebook.practice.Storms;
import org.rimebook.practice.Weather;
import org.rimebook.practice.bench.Setting.Precipitating;
import org.rimebook.station.Interval;

/**
 * What falls in a winter of a class: storms that swell and flicker on odd seeds, storms of cells on
 * even ones, and sudden bursts in all.
 *
 * @param scenario the class
 * @param variant what is otherwise
 * @param seed seed
 */
record Sky(Scenario scenario, Variant variant, long seed) {

  private static final long MINUTE_MS = 60_000;
  private static final double DAY_MS = 86_400_000;

  Precipitation precipitation(Weather weather, long own) {
    Draws draws = new Draws(own, "bench/sky");
    StormClimate climate = climate(draws);
    Precipitation falling;
    if (variant == Variant.OTHER_STORMS) {
      falling = CascadeStorms.simulated(weather, climate, own);
    } else if (seed % 2 == 0) {
      falling = CellStorms.simulated(weather, climate, own);
    } else {
      falling = Storms.simulated(weather, climate, own);
    }
    return falling.with(bursts(weather.sampling().span(), draws).toArray(Pulse[]::new));
  }

  private StormClimate climate(Draws draws) {
    double perWeek = draws.between(3, 5);
    double hours = draws.between(3.5, 6.5);
    double rate = draws.between(0.8, 1.4);
    return switch (scenario.setting().precipitating()) {
      case ALL_SORTS -> new StormClimate(perWeek, hours, rate, draws.between(0.1, 0.25));
      case DRIZZLE -> new StormClimate(perWeek, hours, 0.5 * rate, draws.between(0.6, 0.8));
      case INTENSE -> new StormClimate(0.6 * perWeek, hours, rate, 0.05);
    };
  }

  /** A few bursts in half a year, many in a class that is about them. */
  private List<Pulse> bursts(Interval span, Draws draws) {
    boolean intense = scenario.setting().precipitating() == Precipitating.INTENSE;
    double days = span.lengthMs() / DAY_MS;
    int count = (int) StrictMath.ceil(days / (intense ? 8 : 45));
    List<Pulse> bursts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      long from = span.fromMs() + (long) (draws.between(0, 1) * span.lengthMs() / 1000) * 1000;
      long lengthMs = (long) draws.between(3, 20) * MINUTE_MS;
      double mmPerHour = draws.spread(10, intense ? 60 : 30);
      bursts.add(Pulse.atRate(new Interval(from, from + lengthMs), mmPerHour));
    }
    return bursts;
  }

  /** Spans in which something falls, widened on both sides and joined where they then touch. */
  static List<Interval> wetRuns(Precipitation falling, long marginMs) {
    List<Interval> runs = new ArrayList<>();
    long from = Long.MIN_VALUE;
    long to = Long.MIN_VALUE;
    for (Pulse pulse : falling.pulses()) {
      if (pulse.interval().fromMs() - marginMs > to) {
        if (to > from) {
          runs.add(new Interval(from, to));
        }
        from = pulse.interval().fromMs() - marginMs;
      }
      to = Math.max(to, pulse.interval().toMs() + marginMs);
    }
    if (to > from) {
      runs.add(new Interval(from, to));
    }
    return runs;
  }
}
