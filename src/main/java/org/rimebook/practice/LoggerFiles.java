package org.rimebook.practice;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/** The files a logger leaves behind: one a month, in its own habits and with its own faults. */
final class LoggerFiles {

  private static final int OVERLAP_ROWS = 24;
  private static final int CUT_CHARACTERS = 17;
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

  private final SimulatedSeason season;
  private final LoggerHabits habits;
  private final LoggerFaults faults;

  LoggerFiles(SimulatedSeason season, LoggerHabits habits, LoggerFaults faults) {
    this.season = season;
    this.habits = habits;
    this.faults = faults;
  }

  /** Content of each month's file. */
  SortedMap<YearMonth, String> content() {
    SortedMap<YearMonth, List<List<String>>> rows = rowsByMonth();
    SortedMap<YearMonth, String> content = new TreeMap<>();
    List<List<String>> before = List.of();
    for (YearMonth month : rows.keySet()) {
      List<List<String>> own = rows.get(month);
      List<List<String>> written = new ArrayList<>();
      if (faults.overlaps().contains(month)) {
        written.addAll(before.subList(Math.max(0, before.size() - OVERLAP_ROWS), before.size()));
      }
      written.addAll(own);
      String text = text(written);
      boolean cut = faults.cut().contains(month);
      content.put(month, cut ? text.substring(0, text.length() - CUT_CHARACTERS) : text);
      before = own;
    }
    return content;
  }

  private SortedMap<YearMonth, List<List<String>>> rowsByMonth() {
    SortedMap<YearMonth, List<List<String>>> months = new TreeMap<>();
    List<List<String>> again = new ArrayList<>();
    for (int i = 0; i < season.sampling().size(); i++) {
      long stampMs = season.sampling().stampMs(i);
      LocalDateTime time = stationTime(stampMs);
      YearMonth month = YearMonth.from(time.minusNanos(1));
      List<List<String>> rows = months.computeIfAbsent(month, m -> new ArrayList<>());
      boolean repeated = faults.repeats().stream().anyMatch(r -> r.contains(stampMs));
      if (!repeated) {
        rows.addAll(again);
        again.clear();
      }
      if (season.logged(i)) {
        List<String> row = row(i, TIME.format(written(stampMs, time)));
        rows.add(row);
        if (repeated) {
          again.add(row);
        }
      }
    }
    return months;
  }

  private LocalDateTime stationTime(long epochMs) {
    ZoneOffset offset = season.sheet().utcOffset();
    return LocalDateTime.ofInstant(Instant.ofEpochMilli(epochMs), offset);
  }

  private LocalDateTime written(long stampMs, LocalDateTime time) {
    for (Interval reset : faults.clockResets()) {
      if (reset.contains(stampMs)) {
        return LoggerFaults.CLOCK_EPOCH.plusSeconds((stampMs - reset.fromMs()) / 1000);
      }
    }
    return time;
  }

  private List<String> row(int index, String time) {
    StationSheet sheet = season.sheet();
    List<String> fields = new ArrayList<>();
    fields.add(time);
    for (int wire = 0; wire < sheet.wires().size(); wire++) {
      fields.add(number(season.frequencyHz(wire, index), habits.frequencyDecimals()));
    }
    for (Channel channel : sheet.channels()) {
      int decimals = channel.quantity().equals(Channel.SUPPLY_VOLTAGE) ? 2 : 1;
      fields.add(number(season.channelValue(channel.quantity(), index), decimals));
    }
    return fields;
  }

  /** Exact decimals of the binary value, so that no platform prints another digit. */
  private String number(double value, int decimals) {
    if (Double.isNaN(value)) {
      return season.sheet().layout().missing().get(0);
    }
    String text = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    return text.replace('.', habits.decimal());
  }

  private String text(List<List<String>> rows) {
    StringWriter text = new StringWriter();
    CsvWriter csv =
        CsvWriter.builder()
            .fieldSeparator(habits.delimiter())
            .lineDelimiter(habits.lineEnd())
            .bufferSize(0)
            .build(text);
    StationSheet sheet = season.sheet();
    if (habits.preamble()) {
      csv.writeRecord("station " + sheet.name(), "program gauge-3w", "table fine");
    }
    csv.writeRecord(header(sheet));
    if (habits.preamble()) {
      csv.writeRecord(units(sheet));
    }
    rows.forEach(csv::writeRecord);
    return text.toString();
  }

  private static List<String> header(StationSheet sheet) {
    List<String> names = new ArrayList<>(List.of(sheet.layout().timeColumn()));
    sheet.wires().stream().map(Wire::frequencyColumn).forEach(names::add);
    sheet.channels().stream().map(Channel::column).forEach(names::add);
    return names;
  }

  private static List<String> units(StationSheet sheet) {
    List<String> units = new ArrayList<>(List.of("TS"));
    sheet.wires().forEach(wire -> units.add("Hz"));
    sheet.channels().forEach(channel -> units.add(channel.unit().symbol()));
    return units;
  }
}
