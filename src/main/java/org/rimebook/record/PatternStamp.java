package org.rimebook.record;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQueries;
import java.util.Locale;
import java.util.Optional;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/** Reads stamps by the {@code time_format} of the station sheet. */
final class PatternStamp implements StampReader {

  private final DateTimeFormatter formatter;
  private final ZoneOffset stationOffset;

  private PatternStamp(DateTimeFormatter formatter, ZoneOffset stationOffset) {
    this.formatter = formatter;
    this.stationOffset = stationOffset;
  }

  /**
   * A reader for a pattern of the letters of {@link DateTimeFormatter}, month names in English.
   *
   * @param stationOffset offset of stamps that carry none
   * @throws InputException when the pattern can't be used or holds no whole date
   */
  static PatternStamp of(String pattern, ZoneOffset stationOffset) throws InputException {
    try {
      DateTimeFormatter formatter =
          new DateTimeFormatterBuilder()
              .parseCaseInsensitive()
              .appendPattern(pattern)
              .toFormatter(Locale.ENGLISH);
      TemporalAccessor back =
          formatter.parse(
              formatter.format(LocalDate.of(2025, 1, 31).atTime(15, 4, 5).atOffset(stationOffset)));
      if (back.query(TemporalQueries.localDate()) == null) {
        throw bad(pattern, "it holds no whole date (year, month and day)");
      }
      boolean clock = pattern.replaceAll("'[^']*'", "").matches(".*[hHkKms].*");
      if (clock && back.query(TemporalQueries.localTime()) == null) {
        throw bad(pattern, "its clock is not whole (H for 0-23, or h with a for AM and PM)");
      }
      return new PatternStamp(formatter, stationOffset);
    } catch (IllegalArgumentException | DateTimeException e) {
      throw bad(pattern, e.getMessage());
    }
  }

  private static InputException bad(String pattern, String why) {
    return new InputException(
        Problem.inFile(
            "station.json",
            "record.time_format \"" + pattern + "\" can't be used: " + why,
            "Write it like \"yyyy-MM-dd HH:mm:ss\", or \"epoch-seconds\" or \"epoch-milliseconds\","
                + " or leave it out to have it found"));
  }

  @Override
  public long epochMs(char[] text, int offset, int length) {
    try {
      TemporalAccessor parsed = formatter.parse(new String(text, offset, length));
      LocalDate date = parsed.query(TemporalQueries.localDate());
      if (date == null) {
        return UNREADABLE;
      }
      LocalTime time =
          Optional.ofNullable(parsed.query(TemporalQueries.localTime())).orElse(LocalTime.MIDNIGHT);
      Period excess = parsed.query(DateTimeFormatter.parsedExcessDays());
      ZoneId zone = Optional.ofNullable(parsed.query(TemporalQueries.zone())).orElse(stationOffset);
      return date.plus(excess).atTime(time).atZone(zone).toInstant().toEpochMilli();
    } catch (DateTimeException e) {
      return UNREADABLE;
    }
  }
}
