package org.rimebook.record;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes the {@code time_format} that reads a stamp in numbers by one order of its date. */
final class StampPatterns {

  private static final Pattern PARTS =
      Pattern.compile(
          "(\\d+)(\\D+)(\\d+)(\\D+)(\\d+)" // the date
              + "(?:([ ,T]+)(\\d+):(\\d+)(?:(:)(\\d+)(?:([.,])(\\d+))?)?)?" // the clock
              + "( *)([AaPp][Mm])?( *)(Z|UTC|GMT|[-+]\\d\\d:\\d\\d|[-+]\\d{4})?");

  private StampPatterns() {}

  /** The pattern; the stamp itself when it isn't made of numbers. */
  static String of(String stamp, DateOrder order) {
    Matcher m = PARTS.matcher(stamp.strip());
    if (!m.matches()) {
      return stamp;
    }
    StringBuilder pattern = new StringBuilder();
    String letters =
        switch (order) {
          case YEAR_MONTH_DAY -> "yMd";
          case DAY_MONTH_YEAR -> "dMy";
          case MONTH_DAY_YEAR -> "Mdy";
        };
    for (int part = 0; part < 3; part++) {
      char letter = letters.charAt(part);
      pattern.append(letter == 'y' ? "y".repeat(m.group(1 + 2 * part).length()) : letter);
      pattern.append(part < 2 ? m.group(2 + 2 * part) : "");
    }
    if (m.group(7) != null) {
      clock(m, pattern);
    }
    return pattern.toString();
  }

  private static void clock(Matcher m, StringBuilder pattern) {
    pattern.append(m.group(6).replace("T", "'T'"));
    pattern.append(m.group(14) == null ? "H:mm" : "h:mm");
    pattern.append(m.group(9) == null ? "" : ":ss");
    pattern.append(m.group(12) == null ? "" : m.group(11) + "S".repeat(m.group(12).length()));
    if (m.group(14) != null) {
      pattern.append(m.group(13)).append('a');
    }
    String zone = m.group(16);
    if (zone != null) {
      pattern.append(m.group(14) == null ? m.group(13) : m.group(15));
      pattern.append(zone.length() == 6 ? "xxx" : zone.length() == 5 ? "xx" : "'" + zone + "'");
    }
  }
}
