package org.rimebook.export.verify;

import java.util.List;
import java.util.Optional;
import org.rimebook.totals.Resolution;

/** The resolution a table is printed at. */
final class PrintedResolution {

  private static final String COLUMN = "catch_mm";

  private PrintedResolution() {}

  /** By the decimals of the first total in a table; empty when it has none. */
  static Optional<Resolution> of(String table) {
    List<String> lines = table.lines().toList();
    int column = lines.isEmpty() ? -1 : List.of(lines.get(0).split(",", -1)).indexOf(COLUMN);
    if (column < 0) {
      return Optional.empty();
    }
    return lines.stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .filter(fields -> fields.length > column && fields[column].contains("."))
        .map(fields -> fields[column].length() - fields[column].indexOf('.') - 1)
        .findFirst()
        .flatMap(PrintedResolution::ofDecimals);
  }

  private static Optional<Resolution> ofDecimals(int decimals) {
    for (Resolution resolution : Resolution.values()) {
      if (resolution.decimals() == decimals) {
        return Optional.of(resolution);
      }
    }
    return Optional.empty();
  }
}
