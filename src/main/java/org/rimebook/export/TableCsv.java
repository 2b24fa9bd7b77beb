package org.rimebook.export;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.rimebook.totals.Reason;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/** A table of totals as CSV (RFC 4180 but for line ends, which are LF). */
final class TableCsv {

  private final Resolution resolution;
  private final ZoneOffset offset;

  TableCsv(Resolution resolution, ZoneOffset offset) {
    this.resolution = resolution;
    this.offset = offset;
  }

  String text(List<TotalRow> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      csv.writeRecord(TableColumn.names());
      for (TotalRow row : rows) {
        csv.writeRecord(fields(row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory can't fail", e);
    }
    return text.toString();
  }

  private List<String> fields(TotalRow row) {
    List<String> fields = new ArrayList<>();
    fields.add(StationTime.iso(row.interval().fromMs(), offset));
    fields.add(StationTime.iso(row.interval().toMs(), offset));
    fields.add(depth(row.catchUnits()));
    fields.add(
        row.uncertaintyMm().isPresent() ? decimal(row.uncertaintyMm().getAsDouble(), 3) : "");
    fields.add(row.quality().code());
    fields.add(decimal(100 * row.completeness(), 1));
    fields.add(String.join("+", row.wires()));
    fields.add(
        row.accumulatedSinceMs().isPresent()
            ? StationTime.iso(row.accumulatedSinceMs().getAsLong(), offset)
            : "");
    fields.add(depth(row.adjustedUnits()));
    fields.add(row.phase().map(phase -> phase.code()).orElse(""));
    fields.add(String.join(";", row.reasons().stream().map(Reason::code).toList()));
    return fields;
  }

  private String depth(OptionalLong units) {
    return units.isPresent() ? resolution.toMm(units.getAsLong()).toPlainString() : "";
  }

  static String decimal(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
