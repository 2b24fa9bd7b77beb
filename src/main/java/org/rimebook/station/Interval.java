package org.rimebook.station;

import java.time.Instant;

/**
 * A half-open span of time [from, to).
 *
 * @param fromMs first instant inside [ms since 1970-01-01T00:00Z]
 * @param toMs first instant outside [ms since 1970-01-01T00:00Z], not before {@code fromMs}
 */
public record Interval(long fromMs, long toMs) {

  public Interval {
    if (toMs < fromMs) {
      throw new IllegalArgumentException(
          "an interval ends before it starts: "
              + Instant.ofEpochMilli(fromMs)
              + " to "
              + Instant.ofEpochMilli(toMs));
    }
  }

  /** The interval between two instants, half-open. */
  public static Interval of(Instant fromInclusive, Instant toExclusive) {
    return new Interval(fromInclusive.toEpochMilli(), toExclusive.toEpochMilli());
  }

  /** Whether the instant lies inside. */
  public boolean contains(long epochMs) {
    return epochMs >= fromMs && epochMs < toMs;
  }

  /** Whether the two share any time. */
  public boolean overlaps(Interval other) {
    return Math.max(fromMs, other.fromMs) < Math.min(toMs, other.toMs);
  }

  /** Length [ms]. */
  public long lengthMs() {
    return toMs - fromMs;
  }

  /** Start. */
  public Instant from() {
    return Instant.ofEpochMilli(fromMs);
  }

  /** End, outside. */
  public Instant to() {
    return Instant.ofEpochMilli(toMs);
  }
}
