package org.rimebook.export.report;

import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.station.Interval;
import org.rimebook.totals.Quality;
import org.rimebook.totals.TotalRow;

/** Every hour of the season: a row for each day, a column for each of its hours. */
final class HoursSection implements ReportSection {

  private static final int HOURS_A_DAY = 24;
  private static final long HOUR_MS = 3_600_000;

  private final ReportData data;

  HoursSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Hour by hour";
  }

  @Override
  public void write(Flow flow) {
    flow.paragraph(
        "Catch in mm of each hour of the climatological day, which starts at "
            + data.sheet().dayStartsAt()
            + text(" station time (%s). ", data.words().zone())
            + marks()
            + ". A trailing < marks a total that holds all that fell since the last hour without"
            + " one. A dot is no catch; an empty field lies outside the record. hourly.csv has"
            + " uncertainty, completeness and reasons of each.");
    Table.Builder table = new Table.Builder().small().words("Day");
    long first = data.totals().daily().get(0).interval().fromMs();
    IntStream.range(0, HOURS_A_DAY)
        .forEach(hour -> table.figures(hourOfDay(first + hour * HOUR_MS)));
    table.figures("Day mm");
    int next = 0;
    List<TotalRow> hours = data.totals().hourly();
    for (TotalRow day : data.totals().daily()) {
      List<TotalRow> own = new ArrayList<>();
      while (next < hours.size() && hours.get(next).interval().fromMs() < day.interval().toMs()) {
        own.add(hours.get(next++));
      }
      table.row(cells(day, own));
    }
    flow.table(table.done());
  }

  private String hourOfDay(long epochMs) {
    return data.words().time(epochMs).substring(11, 13);
  }

  /** What the letters mean. */
  private static String marks() {
    List<String> marks = new ArrayList<>();
    for (Quality quality : Quality.values()) {
      if (!mark(quality).isEmpty() && quality != Quality.MISSING) {
        marks.add(mark(quality) + " " + quality.code());
      }
    }
    return "Letters: "
        + String.join(", ", marks)
        + "; none is good; "
        + ReportWords.NONE
        + " is missing";
  }

  private static String mark(Quality quality) {
    return quality == Quality.GOOD ? "" : quality.code().substring(0, 1);
  }

  private String[] cells(TotalRow day, List<TotalRow> hours) {
    String[] cells = new String[HOURS_A_DAY + 2];
    Arrays.fill(cells, "");
    cells[0] = data.words().date(day.interval().fromMs());
    for (TotalRow hour : hours) {
      cells[1 + column(day.interval(), hour)] = cell(hour);
    }
    cells[HOURS_A_DAY + 1] = cell(day);
    return cells;
  }

  private static int column(Interval day, TotalRow hour) {
    long at = Math.floorDiv(hour.interval().fromMs() - day.fromMs(), HOUR_MS);
    return (int) Math.max(0, Math.min(HOURS_A_DAY - 1, at));
  }

  private String cell(TotalRow row) {
    if (row.catchUnits().isEmpty()) {
      return ReportWords.NONE;
    }
    // A dot before a letter would look like a letter struck out.
    String marks = mark(row.quality()) + (row.accumulatedSinceMs().isPresent() ? "<" : "");
    boolean dot = row.catchUnits().getAsLong() == 0 && marks.isEmpty();
    return dot ? "·" : data.words().mm(row.catchUnits()) + marks;
  }
}
