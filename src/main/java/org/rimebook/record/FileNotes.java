package org.rimebook.record;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rimebook.station.Problem;

/** Says of a file's faults, in a few notes, what a person should look at. */
final class FileNotes {

  private static final Set<LineReason> FAULTS =
      EnumSet.of(
          LineReason.CONFLICTING_ROW,
          LineReason.BAD_CLOCK,
          LineReason.BAD_TIME,
          LineReason.FIELD_COUNT,
          LineReason.UNREADABLE,
          LineReason.CUT_LINE);

  private FileNotes() {}

  /** One note for each fault lines were set aside for, in the order of their first lines. */
  static List<Problem> ofLines(String file, List<SetAside> setAside) {
    Map<LineReason, SetAside> first = new LinkedHashMap<>();
    Map<LineReason, Long> lines = new EnumMap<>(LineReason.class);
    for (SetAside run : setAside) {
      if (FAULTS.contains(run.reason())) {
        first.putIfAbsent(run.reason(), run);
        lines.merge(run.reason(), run.lines(), Long::sum);
      }
    }
    List<Problem> notes = new ArrayList<>();
    first.forEach((reason, run) -> notes.add(ofLines(file, run, lines.get(reason))));
    return notes;
  }

  private static Problem ofLines(String file, SetAside first, long lines) {
    String counted = lines == 1 ? "set aside" : "the first of " + lines + " lines set aside";
    String detail = first.detail().isEmpty() ? "" : " (" + first.detail() + ")";
    return new Problem(
        file, first.firstLine(), 0, counted + ": " + first.reason().words() + detail, "");
  }

  /**
   * A note for each column that has fields that couldn't be read.
   *
   * @param unreadable these fields, in the order of the file
   * @param used readings of the file
   */
  static List<Problem> ofFields(String file, List<FileAccount.FieldNote> unreadable, long used) {
    Map<String, List<FileAccount.FieldNote>> columns = new LinkedHashMap<>();
    for (FileAccount.FieldNote field : unreadable) {
      columns.computeIfAbsent(field.column(), c -> new ArrayList<>()).add(field);
    }
    List<Problem> notes = new ArrayList<>();
    for (List<FileAccount.FieldNote> fields : columns.values()) {
      FileAccount.FieldNote first = fields.get(0);
      String what =
          (fields.size() == 1 ? "a field" : "the first of " + fields.size() + " fields")
              + " of column \""
              + first.column()
              + "\" taken as missing, not being a number: "
              + LineLedger.quote(first.text());
      String remedy =
          fields.size() * 2L > used
              ? "That is more than half of the column: check record.decimal, record.delimiter and"
                  + " record.missing in station.json"
              : "";
      notes.add(new Problem(file, first.line(), 0, what, remedy));
    }
    return notes;
  }

  /** A note for each wanted column a file lacks while others have it. */
  static List<Problem> ofColumns(String file, Dialect dialect, Wanted wanted) {
    return wanted.values().stream()
        .filter(column -> ColumnNames.find(dialect.names(), column).isEmpty())
        .map(column -> ofColumn(file, dialect, column))
        .toList();
  }

  private static Problem ofColumn(String file, Dialect dialect, String column) {
    return new Problem(
        file,
        dialect.headerLine(),
        0,
        "no column \""
            + column
            + "\" in this file, so it counts as missing; the nearest are "
            + ColumnNames.nearest(dialect.names(), column),
        "If one of them is meant, correct the file's header");
  }
}
