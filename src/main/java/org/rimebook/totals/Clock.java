package org.rimebook.totals;

import java.time.Duration;
import org.rimebook.station.StationSheet;

/**
 * Hours and climatological days of station time, which has a fixed offset: all are equally long.
 */
record Clock(long offsetMs, long dayStartMs) {

  static final long HOUR_MS = 3_600_000;
  static final long DAY_MS = 24 * HOUR_MS;

  static Clock of(StationSheet sheet) {
    return new Clock(
        sheet.utcOffset().getTotalSeconds() * 1000L,
        Duration.ofNanos(sheet.dayStartsAt().toNanoOfDay()).toMillis());
  }

  /** Start of the hour that contains an instant. */
  long hourStart(long epochMs) {
    return Math.floorDiv(epochMs + offsetMs, HOUR_MS) * HOUR_MS - offsetMs;
  }

  /** Start of the climatological day that contains an instant. */
  long dayStart(long epochMs) {
    return Math.floorDiv(epochMs + offsetMs - dayStartMs, DAY_MS) * DAY_MS + dayStartMs - offsetMs;
  }
}
