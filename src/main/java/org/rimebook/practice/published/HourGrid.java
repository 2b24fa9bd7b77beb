package org.rimebook.practice.published;

/**
 * Hours that follow each other. Hour k holds the stamps in (start + k h, start + (k + 1) h], since
 * a stamp closes its interval.
 *
 * @param startMs where the first hour starts [ms since 1970-01-01T00:00Z]
 * @param hours how many there are, not negative
 */
public record HourGrid(long startMs, int hours) {

  /** Length of an hour [ms]. */
  static final long HOUR_MS = 3_600_000;

  public HourGrid {
    if (hours < 0) {
      throw new IllegalArgumentException("a grid of " + hours + " hours");
    }
  }

  /** The instant at which an hour starts; for the number of hours, the end of the last [ms]. */
  long boundaryMs(int hour) {
    return startMs + hour * HOUR_MS;
  }

  /** Adds an amount to the hour that holds a stamp, if one does. */
  void add(double[] hourly, long stampMs, double amountMm) {
    long hour = Math.floorDiv(stampMs - startMs - 1, HOUR_MS);
    if (hour >= 0 && hour < hours) {
      hourly[(int) hour] += amountMm;
    }
  }
}
