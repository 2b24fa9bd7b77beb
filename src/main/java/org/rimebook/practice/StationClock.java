package org.rimebook.practice;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import org.rimebook.station.Interval;

/** Station time as it is said: {@code at("2025-01-08T03:00")}. */
record StationClock(ZoneOffset offset) {

  Instant at(String time) {
    return LocalDateTime.parse(time).toInstant(offset);
  }

  Interval span(String from, String to) {
    return Interval.of(at(from), at(to));
  }
}
