package org.rimebook.desk.model;

import static org.rimebook.station.Words.text;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Reason;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/**
 * What stands in the cells of the totals table.
 *
 * @param scale length of the intervals
 * @param resolution resolution of the totals
 * @param time station time
 * @param midnight whether climatological days start at midnight, so that a date says all
 */
public record TotalsText(
    TotalsScale scale, Resolution resolution, ShortTime time, boolean midnight) {

  /** The text of a cell. */
  public String cell(TotalsRow row, TotalsColumn column) {
    TotalRow total = row.total();
    return switch (column) {
      case START -> start(total);
      case CATCH -> catchMm(total);
      case UNCERTAINTY ->
          total.uncertaintyMm().isPresent()
              ? text("%.3f", total.uncertaintyMm().getAsDouble())
              : "";
      case QUALITY -> total.quality().code();
      case COMPLETE -> text("%.1f", 100 * total.completeness());
      case WIRES -> String.join(" + ", total.wires());
      case SINCE ->
          total.accumulatedSinceMs().isPresent()
              ? time.minute(total.accumulatedSinceMs().getAsLong())
              : "";
      case ADJUSTED -> mm(total.adjustedUnits());
      case PHASE -> total.phase().map(phase -> phase.code()).orElse("");
      case REASONS -> reasons(row);
    };
  }

  /** The start of an interval: as much of it as tells intervals of this length apart. */
  public String start(TotalRow total) {
    long fromMs = total.interval().fromMs();
    return switch (scale) {
      case HOURLY -> time.minute(fromMs);
      case DAILY -> midnight ? time.date(fromMs) : time.minute(fromMs);
      case MONTHLY -> time.month(fromMs);
    };
  }

  private String catchMm(TotalRow total) {
    return total.catchUnits().isPresent() ? mm(total.catchUnits()) : Quality.MISSING.code();
  }

  private String mm(OptionalLong units) {
    return units.isPresent() ? resolution.toMm(units.getAsLong()).toPlainString() : "";
  }

  private static String reasons(TotalsRow row) {
    StringJoiner codes = new StringJoiner(", ");
    if (!row.lacking().isEmpty()) {
      codes.add(row.lacking());
    }
    row.total().reasons().forEach(reason -> codes.add(reason.code()));
    return codes.toString();
  }

  /** More about a row than its cells say, one thing a line. */
  public List<String> more(TotalsRow row) {
    StringJoiner lines = new StringJoiner("\n");
    row.before().ifPresent(before -> lines.add("was " + settled(before)));
    if (!row.lacking().isEmpty()) {
      lines.add("the month lacks " + row.lacking());
    }
    for (Reason reason : row.total().reasons()) {
      lines.add(reason.code() + ": " + reason.words());
    }
    return lines.toString().lines().toList();
  }

  private String settled(TotalRow before) {
    return before.catchUnits().isPresent()
        ? catchMm(before)
            + text(" ± %.3f mm, ", before.uncertaintyMm().orElse(0))
            + before.quality().code()
        : Quality.MISSING.code();
  }

  /** Rows as tab-separated text with a header, missing totals as empty fields. */
  public String tsv(List<TotalsRow> rows) {
    StringBuilder text = new StringBuilder();
    text.append(
            Arrays.stream(TotalsColumn.values())
                .map(TotalsColumn::code)
                .collect(Collectors.joining("\t")))
        .append('\n');
    for (TotalsRow row : rows) {
      StringJoiner fields = new StringJoiner("\t");
      for (TotalsColumn column : TotalsColumn.values()) {
        boolean missing = column == TotalsColumn.CATCH && row.total().catchUnits().isEmpty();
        fields.add(missing ? "" : cell(row, column));
      }
      text.append(fields).append('\n');
    }
    return text.toString();
  }
}
