package org.rimebook.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/**
 * What record files show by themselves, before there is a station sheet: enough to draft one.
 *
 * @param patterns patterns that find the files, as {@code record.files} takes them
 * @param files names of the files, relative to the folder
 * @param dialect how the first file with rows is written, in words
 * @param decimal its decimal mark; a blank when no number of the first lines has one
 * @param columns its columns, in order
 * @param rows fields of its first rows, at most {@value #ROWS}, as written; a row may be short
 */
public record RecordPreview(
    List<String> patterns,
    List<String> files,
    String dialect,
    char decimal,
    List<PreviewColumn> columns,
    List<List<String>> rows) {

  private static final int ROWS = 12;

  private static final List<List<String>> PLACES =
      List.of(List.of("records/*.csv"), List.of("records/*"), List.of("*.csv"));

  public RecordPreview {
    patterns = List.copyOf(patterns);
    files = List.copyOf(files);
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
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

  /**
   * Looks at logger files as they will be found in {@code records}.
   *
   * @param files the files, at least one, no two of one name
   * @throws InputException when none has a header and rows
   */
  public static RecordPreview ofFiles(List<Path> files) throws InputException, IOException {
    List<RecordFile> named =
        files.stream()
            .map(file -> new RecordFile("records/" + file.getFileName(), file))
            .sorted(Comparator.comparing(RecordFile::name))
            .toList();
    boolean csv = named.stream().allMatch(file -> file.name().matches(".*\\.csv(\\.gz)?"));
    return of(csv ? PLACES.get(0) : PLACES.get(1), named);
  }

  private static RecordPreview of(List<String> patterns, List<RecordFile> files)
      throws InputException, IOException {
    List<String> names = files.stream().map(RecordFile::name).toList();
    for (RecordFile file : files) {
      List<LogicalLine> head = Head.of(file);
      Optional<Dialect> dialect = DialectFinder.find(head);
      if (dialect.isPresent() && dialect.get().headerLine() > 0) {
        return of(patterns, names, head, dialect.get());
      }
    }
    throw new InputException(
        Problem.inFile(
            names.get(0),
            "no rows with a header above them are found in it or the other files",
            "A record has a line with the names of its columns, and rows with a time and numbers"));
  }

  private static RecordPreview of(
      List<String> patterns, List<String> names, List<LogicalLine> head, Dialect dialect) {
    List<List<String>> rows = new ArrayList<>();
    for (LogicalLine line : head) {
      if (dialect.isRow(line)) {
        rows.add(Fields.split(line.text(), dialect.delimiter()));
      }
    }
    List<PreviewColumn> columns = columns(rows, dialect);
    String words = Dialect.words(dialect.delimiter(), dialect.decimal());
    int time = columns.stream().map(PreviewColumn::kind).toList().indexOf(PreviewColumn.Kind.TIME);
    if (time >= 0) {
      words += ", " + StampForm.of(cells(rows, time)).words();
    }
    return new RecordPreview(
        patterns,
        names,
        words,
        dialect.decimal(),
        columns,
        rows.subList(0, Math.min(ROWS, rows.size())));
  }

  private static List<PreviewColumn> columns(List<List<String>> rows, Dialect dialect) {
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

  /**
   * The number in a field of the first rows; empty when it is missing or isn't one.
   *
   * @param row number of the row, 0-based
   * @param column number of the column, 0-based
   */
  public OptionalDouble number(int row, int column) {
    if (column >= rows.get(row).size()) {
      return OptionalDouble.empty();
    }
    char[] cell = rows.get(row).get(column).toCharArray();
    double value = NumberReader.withDecimal(decimal).value(cell, 0, cell.length);
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static List<String> cells(List<List<String>> rows, int column) {
    return rows.stream()
        .filter(row -> row.size() > column)
        .map(row -> row.get(column))
        .filter(cell -> !cell.isEmpty())
        .toList();
  }
}
