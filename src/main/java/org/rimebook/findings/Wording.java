package org.rimebook.findings;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** Numbers, times and names as reasons have them. */
final class Wording {

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
  private static final double MINUTE_MS = 60_000;
  private static final int HOUR_MIN = 60;
  private static final int TWO_DAYS_MIN = 48 * HOUR_MIN;

  private Wording() {}

  /** "25 min", "5 h 20 min", "3.4 days". */
  static String duration(long ms) {
    long minutes = Math.round(ms / MINUTE_MS);
    if (minutes < 2 * HOUR_MIN) {
      return minutes + " min";
    }
    if (minutes < TWO_DAYS_MIN) {
      long rest = minutes % HOUR_MIN;
      return minutes / HOUR_MIN + " h" + (rest == 0 ? "" : " " + rest + " min");
    }
    return Words.text("%.1f days", minutes / (24.0 * HOUR_MIN));
  }

  /** "rose by 12.07 mm", "fell by 0.06 mm", "didn't change". */
  static String changed(double mm) {
    String size = Words.text("%.2f", Math.abs(mm));
    if ("0.00".equals(size)) {
      return "didn't change";
    }
    return (mm > 0 ? "rose by " : "fell by ") + size + " mm";
  }

  /** "-4.2 °C", or "not known". */
  static String degC(double degC) {
    return Double.isFinite(degC) ? Words.text("%.1f °C", degC) : "not known";
  }

  /** Station time to the minute. */
  static String time(long epochMs, ZoneOffset offset) {
    return MINUTE.format(Instant.ofEpochMilli(epochMs).atOffset(offset));
  }

  static String span(Interval span, ZoneOffset offset) {
    return time(span.fromMs(), offset) + " to " + time(span.toMs(), offset);
  }

  /** "north", "north and southeast", "a, b and c". */
  static String names(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}
