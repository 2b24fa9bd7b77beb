package org.rimebook.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rimebook.station.RecordLayout;

/** Finds out how a file is laid out. What the station sheet states isn't looked for. */
final class DialectFinder {

  private static final List<Character> DELIMITERS = List.of(',', ';', '\t', '|', Fields.BLANKS);
  private static final int MOST_UNIT_LINES = 3;
  private static final int MANY_ROWS = 10;

  private final List<LogicalLine> head;
  private final List<Character> delimiters;
  private final Optional<Character> decimal;

  private DialectFinder(
      List<LogicalLine> head, Optional<Character> delimiter, Optional<Character> decimal) {
    this.head = head;
    this.delimiters = delimiter.map(List::of).orElse(DELIMITERS);
    this.decimal = decimal;
  }

  /** The layout of a file whose columns are known by name; empty when nothing in it is a row. */
  static Optional<Dialect> find(List<LogicalLine> head, Wanted wanted, RecordLayout layout) {
    DialectFinder finder = new DialectFinder(head, layout.delimiter(), layout.decimal());
    return finder.byNames(wanted).or(finder::byStructure);
  }

  /** The layout of a file of which nothing is known; empty when nothing in it is a row. */
  static Optional<Dialect> find(List<LogicalLine> head) {
    return new DialectFinder(head, Optional.empty(), Optional.empty()).byStructure();
  }

  /** The layout with a delimiter not stated, when only that shows wanted names; else empty. */
  static Optional<Dialect> withOtherDelimiter(
      List<LogicalLine> head, Wanted wanted, RecordLayout layout) {
    DialectFinder stated = new DialectFinder(head, layout.delimiter(), layout.decimal());
    return layout.delimiter().isEmpty() || stated.byNames(wanted).isPresent()
        ? Optional.empty()
        : new DialectFinder(head, Optional.empty(), layout.decimal()).byNames(wanted);
  }

  /** The first line with the most of the wanted names. */
  private Optional<Dialect> byNames(Wanted wanted) {
    int bestScore = 0;
    int bestLine = -1;
    char bestDelimiter = ',';
    List<Integer> named = mayName(wanted);
    for (char delimiter : delimiters) {
      for (int i : named) {
        int score = score(Fields.split(head.get(i).text(), delimiter), wanted);
        if (score > bestScore) {
          bestScore = score;
          bestLine = i;
          bestDelimiter = delimiter;
        }
      }
    }
    return bestLine < 0 ? Optional.empty() : Optional.of(dialect(bestDelimiter, bestLine, 0));
  }

  /** The lines a wanted name stands in, whatever delimits it. */
  private List<Integer> mayName(Wanted wanted) {
    List<String> names =
        Stream.concat(Stream.of(wanted.time()), wanted.values().stream())
            .map(name -> name.strip().toLowerCase(Locale.ROOT))
            .toList();
    List<Integer> lines = new ArrayList<>();
    for (int i = 0; i < head.size(); i++) {
      String lower = head.get(i).text().toLowerCase(Locale.ROOT);
      boolean named = false;
      for (String name : names) {
        named = named || lower.contains(name);
      }
      if (named) {
        lines.add(i);
      }
    }
    return lines;
  }

  private static int score(List<String> names, Wanted wanted) {
    if (names.size() < 2) {
      return 0;
    }
    int score = ColumnNames.find(names, wanted.time()).isEmpty() ? 0 : 1;
    for (String column : wanted.values()) {
      score += ColumnNames.find(names, column).isEmpty() ? 0 : 1;
    }
    return score;
  }

  private Optional<Dialect> byStructure() {
    return Structure.of(head, delimiters)
        .map(found -> dialect(found.delimiter(), found.header(), found.fields()));
  }

  private Dialect dialect(char delimiter, int header, int fields) {
    List<String> names = new ArrayList<>();
    long headerLine = 0;
    List<LogicalLine> units = List.of();
    if (header >= 0) {
      String text = head.get(header).text();
      Fields.withoutEmptyTail(Fields.split(text, delimiter)).forEach(n -> names.add(oneLine(n)));
      names.set(0, names.get(0).startsWith("#") ? names.get(0).substring(1).strip() : names.get(0));
      headerLine = head.get(header).number();
      units = units(header, delimiter);
    }
    Dialect found = new Dialect(delimiter, headerLine, names, units, fields, ' ');
    int ofRows = fields > 0 ? fields : rowSize(found);
    return new Dialect(delimiter, headerLine, names, units, ofRows, decimal.orElse(mark(found)));
  }

  private static String oneLine(String name) {
    return name.replaceAll("\\s*[\r\n]+\\s*", " ");
  }

  /** Lines beneath the header that hold no number and nothing like a date. */
  private List<LogicalLine> units(int header, char delimiter) {
    List<LogicalLine> units = new ArrayList<>();
    for (int i = header + 1; i < head.size() && units.size() < MOST_UNIT_LINES; i++) {
      LogicalLine line = head.get(i);
      if (line.isBlank() || line.isComment()) {
        continue;
      }
      List<String> cells = Fields.split(line.text(), delimiter);
      boolean unlike = cells.stream().anyMatch(c -> Cells.isNumber(c) || Cells.isDate(c));
      boolean filled = cells.stream().anyMatch(c -> !c.isEmpty());
      if (unlike || !filled || cells.size() < 2) {
        break;
      }
      units.add(line);
    }
    return units;
  }

  /**
   * Fields of a row: as many as the header has names, unless many rows leave out the last ones or
   * most have more.
   */
  private int rowSize(Dialect dialect) {
    int named = dialect.names().size();
    Map<Integer, Integer> rowsOfSize = new HashMap<>();
    int most = 0;
    int size = named;
    for (LogicalLine line : head) {
      List<String> cells = Fields.split(line.text(), dialect.delimiter());
      if (dialect.isRow(line) && stamped(cells)) {
        int used = Math.max(named, Fields.withoutEmptyTail(cells).size());
        int fields = Math.min(cells.size(), used);
        int rows = rowsOfSize.merge(fields, 1, Integer::sum);
        if (rows > most) {
          most = rows;
          size = fields;
        }
      }
    }
    boolean leftOut = most >= MANY_ROWS && !rowsOfSize.containsKey(named);
    return size > named || leftOut ? size : named;
  }

  private static boolean stamped(List<String> cells) {
    for (String cell : cells) {
      if (Structure.isStamp(cell)) {
        return true;
      }
    }
    return false;
  }

  /** The decimal mark of most numbers; a blank when none has one. */
  private char mark(Dialect dialect) {
    int commas = 0;
    int points = 0;
    for (LogicalLine line : head) {
      if (dialect.isRow(line)) {
        for (String cell : Fields.split(line.text(), dialect.delimiter())) {
          commas += Cells.hasDecimalComma(cell) ? 1 : 0;
          points += Cells.hasDecimalPoint(cell) ? 1 : 0;
        }
      }
    }
    if (commas == points) {
      return ' ';
    }
    return commas > points ? ',' : '.';
  }
}
