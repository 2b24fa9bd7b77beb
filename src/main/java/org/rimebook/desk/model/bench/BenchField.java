package org.rimebook.desk.model.bench;

import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.desk.model.Numbers;
import org.rimebook.station.Wire;

/** A field of the bench as it is entered in words. */
public enum BenchField {
  WATER_DEG_C("Temperature of the water (°C)", "15", Takes.WATER_DEG_C),
  F0("f0 (Hz), if not read", "1051.2", Takes.ABOVE_0_OR_NOTHING),
  SHEET_A("A (cm/Hz)", "0.0172", Takes.NUMBER),
  SHEET_B("B (cm/Hz²)", "8.2e-6", Takes.NUMBER),
  SHEET_F0("f0 (Hz)", "1050.1", Takes.ABOVE_0),
  VALID_FROM("Holds from", "2025-05-01 10:00", Takes.TIME_OR_NOTHING),
  PER_DEG_C("Coefficient (ppm of the depth per °C)", "-38", Takes.COEFFICIENT),
  STRENGTH("Strength (% by volume)", "100", Takes.PERCENT),
  OIL_DENSITY("Density of the oil (kg/L)", "0.83", Takes.ABOVE_0),
  COLDEST("Coldest air expected (°C)", "-25", Takes.NUMBER),
  MARGIN("Margin below that (°C)", "3", Takes.NOT_NEGATIVE),
  DAYS("Next charge lasts (days)", "120", Takes.DAYS),
  FIRST_ANTIFREEZE("Antifreeze when the record begins (L)", "0", Takes.NOT_NEGATIVE),
  WET_RATE("Rate to plan with (mm/day)", "season's own", Takes.ABOVE_0_OR_NOTHING),
  FROM("From", "2024-10-01 12:00", Takes.TIME),
  TO("To", "2024-10-01 12:15", Takes.TIME),
  EXPECTED("Depth expected (mm)", "0", Takes.NOT_NEGATIVE),
  TAPS_FROM("Taps begin", "2024-10-01 12:15", Takes.TIME_OR_NOTHING),
  TAPS_TO("Taps end", "2024-10-01 12:17", Takes.TIME_OR_NOTHING),
  ARRIVED("Arrived", "2025-01-22 10:30", Takes.TIME),
  LEFT("Left", "2025-01-22 11:45", Takes.TIME),
  ANTIFREEZE("Antifreeze (L)", "4.5", Takes.NOT_NEGATIVE_OR_NOTHING),
  OIL("Oil (L)", "0.2", Takes.NOT_NEGATIVE_OR_NOTHING),
  LEVEL_BEFORE("Level before (mm)", "312.4", Takes.NUMBER_OR_NOTHING),
  LEVEL_AFTER("Level after (mm)", "118.0", Takes.NUMBER_OR_NOTHING),
  REMARKS("Remarks", "snow on the rim, cleared", Takes.WORDS),
  INITIALS("Your initials", "kh", Takes.WORDS);

  private final String label;
  private final String example;
  private final Takes takes;

  BenchField(String label, String example, Takes takes) {
    this.label = label;
    this.example = example;
    this.takes = takes;
  }

  private enum Takes {
    NUMBER(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, ""),
    NUMBER_OR_NOTHING(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, ""),
    ABOVE_0(Double.MIN_VALUE, Double.POSITIVE_INFINITY, "It is more than 0"),
    ABOVE_0_OR_NOTHING(Double.MIN_VALUE, Double.POSITIVE_INFINITY, "It is more than 0"),
    NOT_NEGATIVE(0, Double.POSITIVE_INFINITY, "It is 0 or more"),
    NOT_NEGATIVE_OR_NOTHING(0, Double.POSITIVE_INFINITY, "It is 0 or more"),
    PERCENT(Double.MIN_VALUE, 100, "It is more than 0 and not more than 100"),
    WATER_DEG_C(0, 40, "It lies between 0 and 40"),
    COEFFICIENT(-1e6 * Wire.MOST_PER_DEG_C, 1e6 * Wire.MOST_PER_DEG_C, "It lies within ±1000"),
    DAYS(1, 3650, "It is a whole number of days, 1 to 3650"),
    TIME(0, 0, ""),
    TIME_OR_NOTHING(0, 0, ""),
    WORDS(0, 0, "");

    private final double least;
    private final double most;
    private final String bounds;

    Takes(double least, double most, String bounds) {
      this.least = least;
      this.most = most;
      this.bounds = bounds;
    }

    private boolean nothing() {
      return this == WORDS
          || this == NUMBER_OR_NOTHING
          || this == ABOVE_0_OR_NOTHING
          || this == NOT_NEGATIVE_OR_NOTHING
          || this == TIME_OR_NOTHING;
    }

    private boolean holds(double value) {
      return value >= least && value <= most && (this != DAYS || value == Math.rint(value));
    }
  }

  /** Its name with the unit, times in the station's offset. */
  public String label(ZoneOffset offset) {
    return isTime() ? label + " (UTC" + (offset.equals(ZoneOffset.UTC) ? "" : offset) + ")" : label;
  }

  /** What an entry looks like. */
  public String example() {
    return example;
  }

  /** What stands in it at first. */
  String first() {
    return switch (this) {
      case WATER_DEG_C, STRENGTH, OIL_DENSITY, MARGIN, DAYS, FIRST_ANTIFREEZE, EXPECTED -> example;
      default -> "";
    };
  }

  private boolean isTime() {
    return takes == Takes.TIME || takes == Takes.TIME_OR_NOTHING;
  }

  /** What is wrong with an entry and what to do, in words; empty when nothing is. */
  public Optional<String> fault(String text, ZoneOffset offset) {
    if (text.isBlank()) {
      return takes.nothing() ? Optional.empty() : Optional.of("Enter it, for example " + example);
    }
    if (takes == Takes.WORDS) {
      return Optional.empty();
    }
    if (isTime()) {
      return StationTime.read(text, offset).isPresent()
          ? Optional.empty()
          : Optional.of("Write date and time, like " + example);
    }
    OptionalDouble number = Numbers.read(text);
    if (number.isEmpty()) {
      return Optional.of(Numbers.fault(this == WET_RATE ? "2.5" : example));
    }
    return takes.holds(number.getAsDouble()) ? Optional.empty() : Optional.of(takes.bounds);
  }
}
