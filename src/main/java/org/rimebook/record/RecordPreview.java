package org.rimebook.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/**
 * What record files show by themselves, before there is a station sheet: enough to draft one.
 *
 * @param patterns patterns that find the files, as {@code record.files} takes them
 * @param files names of the files, relative to the folder
 * @param dialect how the first file with rows is written, in words
 * @param columns its columns, in order
 */
public record RecordPreview(
    List<String> patterns, List<String> files, String dialect, List<PreviewColumn> columns) {

  private static final List<List<String>> PLACES =
      List.of(List.of("records/*.csv"), List.of("records/*"), List.of("*.csv"));

  public RecordPreview {
    patterns = List.copyOf(patterns);
    files = List.copyOf(files);
    columns = List.copyOf(columns);
  }

  /**
   * Looks at the record files of a folder: {@code records/*.csv}, packed or not, else all files of
   * {@code records}, else {@code *.csv} in the folder itself.
   *
   * @throws InputException when there is no such file, or none with a header and rows
   */
  public static RecordPreview of(Path folder) throws InputException, IOException {
    for (List<String> patterns : PLACES) {
      List<RecordFile> files = RecordFiles.matching(folder, patterns);
      if (!files.isEmpty()) {
        return of(patterns, files);
      }
    }
    RecordFiles.find(folder, PLACES.get(0)); // says what is there instead
    throw new IllegalStateException("a file came to be while looking");
  }

  private static RecordPreview of(List<String> patterns, List<RecordFile> files)
      throws InputException, IOException {
    List<String> names = files.stream().map(RecordFile::name).toList();
    for (RecordFile file : files) {
      List<LogicalLine> head = Head.of(file);
      Optional<Dialect> dialect = DialectFinder.find(head);
      if (dialect.isPresent() && dialect.get().headerLine() > 0) {
        String words = Dialect.words(dialect.get().delimiter(), dialect.get().decimal());
        return new RecordPreview(patterns, names, words, columns(head, dialect.get()));
      }
    }
    throw new InputException(
        Problem.inFile(
            names.get(0),
            "no rows with a header above them are found in it or the other files",
            "A record has a line with the names of its columns, and rows with a time and numbers"));
  }

  private static List<PreviewColumn> columns(List<LogicalLine> head, Dialect dialect) {
    List<List<String>> rows = new ArrayList<>();
    for (LogicalLine line : head) {
      if (dialect.isRow(line)) {
        rows.add(Fields.split(line.text(), dialect.delimiter()));
      }
    }
    List<List<String>> units = new ArrayList<>();
    dialect.units().forEach(u -> units.add(Fields.split(u.text(), dialect.delimiter())));
    List<PreviewColumn> columns = new ArrayList<>();
    for (int column = 0; column < dialect.names().size(); column++) {
      List<String> cells = cells(rows, column);
      String unit = cells(units, column).stream().findFirst().orElse("");
      columns.add(PreviewColumn.of(dialect.names().get(column), unit, cells, dialect.decimal()));
    }
    return columns;
  }

  private static List<String> cells(List<List<String>> rows, int column) {
    return rows.stream()
        .filter(row -> row.size() > column)
        .map(row -> row.get(column))
        .filter(cell -> !cell.isEmpty())
        .toList();
  }
}
