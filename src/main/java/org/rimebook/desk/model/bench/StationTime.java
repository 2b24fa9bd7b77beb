package org.rimebook.desk.model.bench;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Dates with times as they are typed at the bench: station time, unless an offset is written. */
public final class StationTime {

  private static final DateTimeFormatter WRITTEN =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private StationTime() {}

  /**
   * The instant a text means; empty when it means none.
   *
   * @param text for example "2025-01-15 10:30", with or without seconds, a "T", an offset
   * @param offset the station's
   */
  public static Optional<Instant> read(String text, ZoneOffset offset) {
    String iso = text.strip().replace('−', '-').replaceFirst("[ \\t]+", "T").replace(" ", "");
    try {
      return Optional.of(OffsetDateTime.parse(iso).toInstant());
    } catch (DateTimeException e) {
      return local(iso, offset);
    }
  }

  private static Optional<Instant> local(String iso, ZoneOffset offset) {
    try {
      return Optional.of(LocalDateTime.parse(iso).toInstant(offset));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** An instant as it would be typed, to the minute. */
  public static String words(Instant at, ZoneOffset offset) {
    return WRITTEN.format(at.atOffset(offset));
  }
}
