package org.rimebook.export.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

/**
 * Times and figures as the report writes them.
 *
 * @param offset station time
 * @param resolution resolution of the totals
 */
record ReportWords(ZoneOffset offset, Resolution resolution) {

  /** Stands where there is no figure. */
  static final String NONE = "–";

  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("uuuu-MM", Locale.ROOT);
  private static final long MINUTE_MS = 60_000;

  String time(long epochMs) {
    return format(Math.floorMod(epochMs, MINUTE_MS) == 0 ? MINUTE : SECOND, epochMs);
  }

  String date(long epochMs) {
    return format(DATE, epochMs);
  }

  String month(long epochMs) {
    return format(MONTH, epochMs);
  }

  private String format(DateTimeFormatter form, long epochMs) {
    return form.format(Instant.ofEpochMilli(epochMs).atOffset(offset));
  }

  String span(Interval span) {
    return unbroken(time(span.fromMs())) + " " + unbroken("to " + time(span.toMs()));
  }

  /** With blanks at which no line ends. */
  static String unbroken(String words) {
    return words.replace(' ', '\u00A0');
  }

  /** Station time in words. */
  String zone() {
    return offset.getTotalSeconds() == 0 ? "UTC" : "UTC" + offset.getId().replace('-', '−');
  }

  /** A depth in whole units of the resolution [mm]. */
  String mm(OptionalLong units) {
    return units.isPresent() ? signed(resolution.toMm(units.getAsLong()).toPlainString()) : NONE;
  }

  String mm(OptionalDouble valueMm, int decimals) {
    return valueMm.isPresent() ? number(valueMm.getAsDouble(), decimals) : NONE;
  }

  static String number(double value, int decimals) {
    return signed(
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString());
  }

  /** With its sign, whether it is more or less. */
  String change(OptionalLong units) {
    String words = mm(units);
    return units.orElse(0) > 0 ? "+" + words : words;
  }

  private static String signed(String number) {
    return number.replace('-', '−');
  }
}
