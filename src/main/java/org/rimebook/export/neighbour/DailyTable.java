package org.rimebook.export.neighbour;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.totals.neighbour.DayCatch;

/**
 * A table of daily totals as this program writes them, by whomever: CSV in UTF-8 with the columns
 * {@code start}, {@code end} and {@code catch_mm}, and {@code quality} and {@code
 * accumulated_since} where it has them, in any order; others are passed over.
 */
public final class DailyTable {

  private static final int MOST_PROBLEMS = 10;

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final List<DailyRow> rows = new ArrayList<>();

  private DailyTable(String file) {
    this.file = file;
  }

  /**
   * Reads a table.
   *
   * @param path the file
   * @return its rows, in the order of time
   * @throws InputException when it can't be used, naming line and column and what to do
   * @throws IOException when the file can't be read
   */
  public static List<DayCatch> read(Path path) throws InputException, IOException {
    DailyTable table = new DailyTable(path.toString());
    table.rows(table.text(Files.readAllBytes(path)));
    table.order();
    table.refuse();
    return table.rows.stream().map(DailyRow::day).toList();
  }

  private String text(byte[] bytes) throws InputException {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      if (text.indexOf('\0') < 0) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
      }
    } catch (CharacterCodingException e) {
      // Said below, as for text of two bytes a character.
    }
    throw new InputException(
        Problem.inFile(file, "isn't UTF-8 text", "Save it again with the encoding UTF-8"));
  }

  private void rows(String text) throws InputException {
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      DailyColumns columns = null;
      for (CsvRecord line : reader) {
        if (columns == null) {
          columns = DailyColumns.of(file, line.getFields());
        } else {
          row(columns, line);
        }
      }
    } catch (CsvParseException e) {
      throw new InputException(
          Problem.inFile(file, "isn't a CSV table (" + e.getMessage() + ")", "Check its quotes"));
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory can't fail", e);
    }
    if (rows.isEmpty() && problems.isEmpty()) {
      problems.add(
          Problem.inFile(file, "has no row", "Name a table of daily totals, such as daily.csv"));
    }
  }

  private void row(DailyColumns columns, CsvRecord line) {
    if (problems.size() >= MOST_PROBLEMS) {
      return;
    }
    try {
      rows.add(columns.row(line.getStartingLineNumber(), line.getFields()));
    } catch (InputException e) {
      problems.addAll(e.problems());
    }
  }

  private void order() {
    rows.sort(Comparator.comparingLong(row -> row.interval().fromMs()));
    for (int i = 1; i < rows.size() && problems.size() < MOST_PROBLEMS; i++) {
      if (rows.get(i).interval().overlaps(rows.get(i - 1).interval())) {
        problems.add(
            new Problem(
                file,
                rows.get(i).line(),
                0,
                "its day overlaps that of line " + rows.get(i - 1).line(),
                "Leave one row for each day"));
      }
    }
  }

  private void refuse() throws InputException {
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }
}
