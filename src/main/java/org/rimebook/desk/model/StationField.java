package org.rimebook.desk.model;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;

/** A field of the station as it is entered in words. */
public enum StationField {
  NAME("Name", "Example Ridge", true),
  LATITUDE("Latitude, ° north", "53.2", false),
  LONGITUDE("Longitude, ° east", "-117.1", false),
  ELEVATION("Elevation, m", "1490", false),
  UTC_OFFSET("Station time, from UTC", "-07:00", true),
  DAY_START("Day starts at", "00:00", true),
  ORIFICE("Orifice, cm²", "200", true),
  CAPACITY("Capacity, mm", "600", false),
  RIM("Rim height, m", "2", false),
  GATE("Gate time, s", "1", false);

  private final String label;
  private final String example;
  private final boolean required;

  StationField(String label, String example, boolean required) {
    this.label = label;
    this.example = example;
    this.required = required;
  }

  /** Its name and unit on screen. */
  public String label() {
    return label;
  }

  /** What an entry looks like. */
  public String example() {
    return example;
  }

  /** Whether a season can't be opened without it. */
  public boolean required() {
    return required;
  }

  /** What is wrong with an entry and what to do, in words; empty when nothing is. */
  public Optional<String> fault(String text) {
    if (text.isBlank()) {
      return required ? Optional.of("Enter it, for example " + example) : Optional.empty();
    }
    return switch (this) {
      case NAME -> Optional.empty();
      case UTC_OFFSET ->
          offset(text).isPresent()
              ? Optional.empty()
              : Optional.of(
                  "Write hours and minutes east of UTC, like -07:00, without summer time");
      case DAY_START ->
          fullHour(text)
              ? Optional.empty()
              : Optional.of("Write a full hour of station time, like 06:00");
      case LATITUDE -> between(text, -90, 90);
      case LONGITUDE -> between(text, -180, 360);
      case ELEVATION -> between(text, -500, 9000);
      default -> positive(text);
    };
  }

  /** An offset as entered. */
  static Optional<ZoneOffset> offset(String text) {
    try {
      return Optional.of(ZoneOffset.of(text.strip().replace('−', '-')));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static boolean fullHour(String text) {
    try {
      LocalTime time = LocalTime.parse(text.strip());
      return time.equals(LocalTime.of(time.getHour(), 0));
    } catch (DateTimeException e) {
      return false;
    }
  }

  private Optional<String> between(String text, double least, double most) {
    OptionalDouble number = Numbers.read(text);
    if (number.isEmpty()) {
      return Optional.of(Numbers.fault(example));
    }
    double value = number.getAsDouble();
    return value >= least && value <= most
        ? Optional.empty()
        : Optional.of("It lies between " + Math.round(least) + " and " + Math.round(most));
  }

  private Optional<String> positive(String text) {
    OptionalDouble number = Numbers.read(text);
    if (number.isEmpty()) {
      return Optional.of(Numbers.fault(example));
    }
    return number.getAsDouble() > 0 ? Optional.empty() : Optional.of("It is more than zero");
  }
}
