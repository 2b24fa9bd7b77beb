package org.rimebook.export;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Instants in station time, ISO 8601 with the station's offset in figures. */
public final class StationTime {

  private static final DateTimeFormatter ISO =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

  private StationTime() {}

  /** An instant to the second, for example {@code 2025-01-15T10:30:00-07:00}. */
  public static String iso(long epochMs, ZoneOffset offset) {
    return ISO.format(Instant.ofEpochMilli(epochMs).atOffset(offset));
  }
}
