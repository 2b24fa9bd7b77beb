package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalDouble;

/** Times and figures as leaflets write them. */
final class Say {

  /** Stands where there is no figure. */
  static final String NONE = "–";

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT);

  private Say() {}

  static String time(long epochMs, ZoneOffset offset) {
    return MINUTE.format(Instant.ofEpochMilli(epochMs).atOffset(offset));
  }

  static String date(long epochMs, ZoneOffset offset) {
    return DATE.format(Instant.ofEpochMilli(epochMs).atOffset(offset));
  }

  static String number(OptionalDouble value, int decimals) {
    return value.isPresent() ? number(value.getAsDouble(), decimals) : NONE;
  }

  static String number(double value, int decimals) {
    return text("%." + decimals + "f", value);
  }

  static String signed(OptionalDouble value, int decimals) {
    return value.isPresent() ? text("%+." + decimals + "f", value.getAsDouble()) : NONE;
  }
}
