package org.rimebook.practice;

import org.rimebook.station.Interval;

/**
 * Precipitation at a constant rate.
 *
 * @param interval when it falls; not empty
 * @param mm how much falls in all [mm], not negative
 */
public record Pulse(Interval interval, double mm) {

  private static final double MS_PER_HOUR = 3_600_000.0;

  public Pulse {
    if (interval.lengthMs() == 0 || !(mm >= 0)) {
      throw new IllegalArgumentException("a pulse needs time and an amount: " + interval + mm);
    }
  }

  /** Precipitation at a rate [mm/h]. */
  public static Pulse atRate(Interval interval, double mmPerHour) {
    return new Pulse(interval, mmPerHour * interval.lengthMs() / MS_PER_HOUR);
  }

  double mmBetween(long fromMs, long toMs) {
    long shared = Math.min(toMs, interval.toMs()) - Math.max(fromMs, interval.fromMs());
    return shared <= 0 ? 0 : mm * shared / interval.lengthMs();
  }
}
