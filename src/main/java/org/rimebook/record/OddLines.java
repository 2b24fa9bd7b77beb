package org.rimebook.record;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Says of each line of a file that isn't a row what it is. */
final class OddLines {

  private final Dialect dialect;
  private final Wanted wanted;
  private final LineLedger ledger;
  private final Set<Long> unitLines = new HashSet<>();
  private final Set<List<String>> headCells = new HashSet<>();
  private ColumnMap columns;
  private int fields;

  /**
   * @param head the first lines of the file
   */
  OddLines(String file, Dialect dialect, Wanted wanted, List<LogicalLine> head) {
    this.dialect = dialect;
    this.wanted = wanted;
    ledger = new LineLedger(file);
    columns = ColumnMap.of(dialect.names(), wanted);
    fields = dialect.fields();
    dialect.units().forEach(unit -> unitLines.add(unit.number()));
    for (LogicalLine line : head) {
      if (line.number() <= dialect.lastHeadLine()) {
        headCells.add(Fields.split(line.text(), dialect.delimiter()));
      }
    }
  }

  /**
   * How a line looks.
   *
   * @param texts its fields up to the stamp; all of them when the stamp can't be read
   * @param fields how many fields it has
   * @param extra whether it has fields beyond those of the header
   * @param hasStamp whether its stamp can be read
   * @param garbled whether it holds control characters
   */
  record Look(List<String> texts, int fields, boolean extra, boolean hasStamp, boolean garbled) {}

  LineLedger ledger() {
    return ledger;
  }

  long lastHeadLine() {
    return dialect.lastHeadLine();
  }

  /** Where the columns stand now: a header further down may have changed it. */
  ColumnMap columns() {
    return columns;
  }

  /** Fields of a row now. */
  int fields() {
    return fields;
  }

  String columnName(int value) {
    return wanted.values().get(value);
  }

  /** Accounts for a line that isn't looked at: of the head, blank, or a comment. */
  void plain(long first, long last, boolean blank, boolean comment) {
    LineReason reason = LineReason.PREAMBLE;
    if (first == dialect.headerLine()) {
      reason = LineReason.HEADER;
    } else if (unitLines.contains(first)) {
      reason = LineReason.UNITS;
    } else if (blank) {
      reason = LineReason.BLANK;
    } else if (comment) {
      reason = LineReason.COMMENT;
    }
    ledger.setAside(first, last, reason, "");
  }

  /** Accounts for a line that should be a row and isn't. */
  void odd(long first, long last, Look look) {
    if (look.garbled()) {
      ledger.setAside(first, last, LineReason.UNREADABLE, "");
    } else if (!look.hasStamp() && look.texts().stream().allMatch(String::isEmpty)) {
      ledger.setAside(first, last, LineReason.BLANK, look.fields() > 1 ? "empty fields" : "");
    } else if (!look.hasStamp() && isHeader(look.texts())) {
      ledger.setAside(first, last, LineReason.REPEATED_HEADER, "");
    } else if (look.fields() < fields || look.extra()) {
      String detail = look.fields() + " fields where " + fields + " belong";
      ledger.setAside(first, last, LineReason.FIELD_COUNT, detail);
    } else {
      String stamp = look.texts().get(Math.min(columns.time(), look.texts().size() - 1));
      ledger.setAside(first, last, LineReason.BAD_TIME, LineLedger.quote(stamp));
    }
  }

  /** Whether the head of the file stands here again, or another header: then that holds. */
  private boolean isHeader(List<String> texts) {
    if (headCells.contains(texts)) {
      return true;
    }
    ColumnMap map = ColumnMap.of(texts, wanted);
    if (map.time() < 0 || !map.hasValues()) {
      return false;
    }
    columns = map;
    fields = Fields.withoutEmptyTail(texts).size();
    return true;
  }

  /** Whether a text holds control characters, as after a power failure. */
  static boolean isGarbled(String text) {
    return text.chars().anyMatch(c -> c < ' ' && c != '\t' && c != '\r' && c != '\n');
  }
}
