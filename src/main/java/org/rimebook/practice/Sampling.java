package org.rimebook.practice;

import java.time.Duration;
import org.rimebook.station.Interval;

/**
 * Readings at equal steps. A stamp closes its step: the first reading comes one step after the
 * start, the last one at the end, and a reading shows the level at its stamp.
 *
 * @param span from the start of the first step to the end of the last
 * @param stepMs sampling interval [ms]; divides the span
 */
public record Sampling(Interval span, long stepMs) {

  public Sampling {
    if (stepMs <= 0 || span.lengthMs() % stepMs != 0) {
      throw new IllegalArgumentException("the span isn't a whole number of steps of " + stepMs);
    }
  }

  /** Readings over a span. */
  public static Sampling every(Duration step, Interval span) {
    return new Sampling(span, step.toMillis());
  }

  /** Number of readings. */
  public int size() {
    return Math.toIntExact(span.lengthMs() / stepMs);
  }

  /** Stamp of a reading [ms since epoch]. */
  public long stampMs(int index) {
    return span.fromMs() + (index + 1L) * stepMs;
  }

  /** The reading whose step holds the instant, the nearest one outside the span. */
  public int indexAt(long epochMs) {
    long steps = Math.floorDiv(epochMs - span.fromMs() - 1, stepMs);
    return (int) Math.max(0, Math.min(size() - 1L, steps));
  }
}
