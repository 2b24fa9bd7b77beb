package org.rimebook.desk.strip;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rimebook.station.Interval;

/** Reads a date as an analyst writes it, in station time. */
final class DateWords {

  private static final Pattern FORM =
      Pattern.compile("(\\d{4})-(\\d{1,2})(?:-(\\d{1,2})(?:[T ]+(\\d{1,2})(?::?(\\d{2}))?)?)?");

  private DateWords() {}

  /**
   * What the words name: a month, a day, an hour or a minute; empty when they are no date.
   *
   * @param words for example 2025-01, 2025-01-15, 2025-01-15 06, 2025-01-15 06:30
   * @param offset station time
   */
  static Optional<Interval> read(String words, ZoneOffset offset) {
    Matcher match = FORM.matcher(words.strip());
    if (!match.matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(named(match, offset));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Interval named(Matcher match, ZoneOffset offset) {
    int year = Integer.parseInt(match.group(1));
    int month = Integer.parseInt(match.group(2));
    if (match.group(3) == null) {
      YearMonth whole = YearMonth.of(year, month);
      return between(
          whole.atDay(1).atStartOfDay(), whole.plusMonths(1).atDay(1).atStartOfDay(), offset);
    }
    LocalDate day = LocalDate.of(year, month, Integer.parseInt(match.group(3)));
    if (match.group(4) == null) {
      return between(day.atStartOfDay(), day.plusDays(1).atStartOfDay(), offset);
    }
    LocalDateTime hour = day.atTime(Integer.parseInt(match.group(4)), 0);
    if (match.group(5) == null) {
      return between(hour, hour.plusHours(1), offset);
    }
    LocalDateTime minute = hour.withMinute(Integer.parseInt(match.group(5)));
    return between(minute, minute.plusMinutes(1), offset);
  }

  private static Interval between(LocalDateTime from, LocalDateTime to, ZoneOffset offset) {
    return Interval.of(from.toInstant(offset), to.toInstant(offset));
  }
}
