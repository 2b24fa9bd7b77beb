package org.rimebook.desk.model;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.rimebook.station.Interval;

/**
 * Station time as it is read in tables and sentences: to the minute, without the offset, which is
 * the same for all.
 *
 * @param offset the station's offset
 */
public record ShortTime(ZoneOffset offset) {

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("uuuu-MM", Locale.ROOT);

  /** An instant, for example {@code 2025-01-15 10:30}. */
  public String minute(long epochMs) {
    return MINUTE.format(at(epochMs));
  }

  /** A date, for example {@code 2025-01-15}. */
  public String date(long epochMs) {
    return DateTimeFormatter.ISO_LOCAL_DATE.format(at(epochMs));
  }

  /** A month, for example {@code 2025-01}. */
  public String month(long epochMs) {
    return MONTH.format(at(epochMs));
  }

  /** A stretch of time; the date of its end is left out when it is that of its start. */
  public String span(Interval span) {
    LocalDate first = at(span.fromMs()).toLocalDate();
    OffsetDateTime end = at(span.toMs());
    return minute(span.fromMs())
        + " to "
        + (first.equals(end.toLocalDate()) ? CLOCK : MINUTE).format(end);
  }

  private OffsetDateTime at(long epochMs) {
    return Instant.ofEpochMilli(epochMs).atOffset(offset);
  }
}
