package org.rimebook.practice;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.rimebook.station.Interval;

/**
 * The truth of a season as tables: {@code start,end,catch_mm,fell_mm}. Printed to 0.0001 mm from
 * the running total, so that hours add up to days and days to the season in the printed digits.
 */
final class TruthTables {

  private static final int DECIMALS = 4;
  private static final double UNITS_PER_MM = 1e4;

  private final SimulatedSeason season;

  TruthTables(SimulatedSeason season) {
    this.season = season;
  }

  String hourly() {
    return table(Duration.ofHours(1), LocalTime.MIDNIGHT);
  }

  String daily() {
    return table(Duration.ofDays(1), season.sheet().dayStartsAt());
  }

  /** Totals of the season, one a line. */
  String totals() {
    Truth truth = season.truth();
    Interval span = season.sampling().span();
    StringWriter text = new StringWriter();
    CsvWriter csv = writer(text);
    csv.writeRecord("quantity", "mm");
    csv.writeRecord("catch", between(truth.caught(), span));
    csv.writeRecord("fell", between(truth.fell(), span));
    csv.writeRecord("charge_at_start", decimal(units(truth.chargeMm())));
    csv.writeRecord("poured_in", decimal(units(truth.pouredMm())));
    csv.writeRecord("emptied", decimal(units(truth.removedMm())));
    csv.writeRecord("evaporated", decimal(units(truth.evaporatedMm())));
    csv.writeRecord("level_at_end", decimal(units(truth.finalMm())));
    return text.toString();
  }

  private String table(Duration step, LocalTime boundary) {
    ZoneOffset offset = season.sheet().utcOffset();
    Interval span = season.sampling().span();
    StringWriter text = new StringWriter();
    CsvWriter csv = writer(text);
    csv.writeRecord("start", "end", "catch_mm", "fell_mm");
    long phaseMs = boundary.toSecondOfDay() * 1000L - offset.getTotalSeconds() * 1000L;
    long stepMs = step.toMillis();
    long start = Math.floorDiv(span.fromMs() - phaseMs, stepMs) * stepMs + phaseMs;
    for (; start < span.toMs(); start += stepMs) {
      Interval row = new Interval(start, start + stepMs);
      Truth truth = season.truth();
      csv.writeRecord(
          time(row.from(), offset),
          time(row.to(), offset),
          between(truth.caught(), row),
          between(truth.fell(), row));
    }
    return text.toString();
  }

  private static CsvWriter writer(StringWriter text) {
    return CsvWriter.builder().lineDelimiter(LineDelimiter.LF).bufferSize(0).build(text);
  }

  static String time(Instant instant, ZoneOffset offset) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(OffsetDateTime.ofInstant(instant, offset));
  }

  private static String between(Precipitation precipitation, Interval interval) {
    long from = units(precipitation.accumulatedMm(interval.fromMs()));
    return decimal(units(precipitation.accumulatedMm(interval.toMs())) - from);
  }

  private static long units(double mm) {
    return Math.round(mm * UNITS_PER_MM);
  }

  private static String decimal(long units) {
    return BigDecimal.valueOf(units, DECIMALS).toPlainString();
  }
}
