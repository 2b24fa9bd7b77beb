package org.rimebook.desk.model;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.rimebook.station.Interval;

/** Times of entries in words: station time, to the minute. */
public final class EntryTimes {

  private static final DateTimeFormatter CLOCK = pattern("HH:mm");
  private static final DateTimeFormatter DAY = pattern("d MMM");
  private static final DateTimeFormatter FULL = pattern("d MMM uuuu HH:mm");
  private static final DateTimeFormatter MONTH = pattern("MMMM uuuu");
  private static final long MINUTE_MS = 60_000;
  private static final long HOUR_MS = 60 * MINUTE_MS;
  private static final long DAY_MS = 24 * HOUR_MS;

  private final ZoneOffset offset;

  /**
   * @param offset the station's offset
   */
  public EntryTimes(ZoneOffset offset) {
    this.offset = offset;
  }

  /** For example "22 Jan 10:30". */
  public String dayAndTime(long epochMs) {
    LocalDateTime at = local(epochMs);
    return DAY.format(at) + " " + CLOCK.format(at);
  }

  /** For example "January 2025". */
  public String month(long epochMs) {
    return MONTH.format(local(epochMs));
  }

  /** For example "22 Jan 10:30 to 11:45", or "8 Jan 03:00 to 10 Jan 13:00". */
  public String span(Interval interval) {
    LocalDate first = local(interval.fromMs()).toLocalDate();
    LocalDate last = local(interval.toMs()).toLocalDate();
    String end =
        first.equals(last) ? CLOCK.format(local(interval.toMs())) : dayAndTime(interval.toMs());
    return dayAndTime(interval.fromMs()) + " to " + end;
  }

  /** Length of a time in words, in two units at most, for example "2 d 10 h" or "35 min". */
  public static String length(long ms) {
    if (ms < MINUTE_MS) {
      return Math.round(ms / 1000.0) + " s";
    }
    long minutes = Math.round(ms / (double) MINUTE_MS);
    long hours = minutes / 60;
    if (hours >= 24) {
      long whole = Math.round(ms / (double) HOUR_MS);
      return two(whole / 24, "d", whole % 24, "h");
    }
    return hours == 0 ? minutes + " min" : two(hours, "h", minutes % 60, "min");
  }

  /** When an entry was written, for example "22 Jan 2025 14:45"; as it stands if unreadable. */
  public String written(String at) {
    try {
      return FULL.format(OffsetDateTime.parse(at).withOffsetSameInstant(offset));
    } catch (DateTimeException e) {
      return at;
    }
  }

  /** The instant an entry was written [ms since epoch]; 0 if unreadable. */
  public static long writtenMs(String at) {
    try {
      return OffsetDateTime.parse(at).toInstant().toEpochMilli();
    } catch (DateTimeException e) {
      return 0;
    }
  }

  private LocalDateTime local(long epochMs) {
    return LocalDateTime.ofInstant(Instant.ofEpochMilli(epochMs), offset);
  }

  private static String two(long many, String unit, long rest, String smaller) {
    return many + " " + unit + (rest == 0 ? "" : " " + rest + " " + smaller);
  }

  private static DateTimeFormatter pattern(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }
}
