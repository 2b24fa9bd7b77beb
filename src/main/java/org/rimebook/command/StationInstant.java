package org.rimebook.command;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.temporal.TemporalAccessor;
import org.rimebook.station.StationSheet;

/** What a time given on the command line means at a station. */
final class StationInstant {

  private StationInstant() {}

  /**
   * The instant: as it stands with an offset, in station time without, and of a date alone the
   * start of its climatological day [ms since epoch].
   */
  static long of(TemporalAccessor at, StationSheet sheet) {
    if (at instanceof OffsetDateTime instant) {
      return instant.toInstant().toEpochMilli();
    }
    LocalDateTime local =
        at instanceof LocalDate date ? date.atTime(sheet.dayStartsAt()) : LocalDateTime.from(at);
    return local.toInstant(sheet.utcOffset()).toEpochMilli();
  }
}
