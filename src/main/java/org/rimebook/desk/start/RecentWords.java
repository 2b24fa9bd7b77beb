package org.rimebook.desk.start;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.rimebook.desk.model.RecentList.Known;

/** A recent season in words. */
final class RecentWords {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private RecentWords() {}

  /** A day as the person at this machine has it. */
  static String day(Instant instant) {
    return DAY.format(instant.atZone(ZoneId.systemDefault()));
  }

  /** All that is said of a season, for screen readers. */
  static String of(Known known) {
    return known.season().name()
        + ", "
        + known.season().folder()
        + known.season().totalMm().map(mm -> ", " + mm.toPlainString() + " mm").orElse("")
        + (known.there() ? ", opened " + day(known.season().opened()) : ", no season is there now");
  }
}
