package org.rimebook.record;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The layout that rows show by themselves, without a name to look for.
 *
 * @param delimiter delimiter that makes most rows
 * @param fields fields of most rows
 * @param header index of the line that looks like their header, -1 when none does
 */
record Structure(char delimiter, int fields, int header) {

  /** Finds the layout; empty when no delimiter makes a row out of any line. */
  static Optional<Structure> of(List<LogicalLine> head, List<Character> delimiters) {
    Structure best = null;
    int bestScore = 0;
    for (char delimiter : delimiters) {
      Map<Integer, Integer> rowsOfSize = new HashMap<>();
      for (LogicalLine line : head) {
        List<String> fields = Fields.withoutEmptyTail(Fields.split(line.text(), delimiter));
        if (isRow(line, fields)) {
          rowsOfSize.merge(fields.size(), 1, Integer::sum);
        }
      }
      for (Map.Entry<Integer, Integer> size : rowsOfSize.entrySet()) {
        int score = size.getValue() * size.getKey();
        if (score > bestScore) {
          bestScore = score;
          best = new Structure(delimiter, size.getKey(), -1);
        }
      }
    }
    return Optional.ofNullable(best).map(found -> found.withHeader(head));
  }

  private static boolean isRow(LogicalLine line, List<String> fields) {
    if (line.isComment() || fields.size() < 2) {
      return false;
    }
    boolean stamped = false;
    int like = 0;
    for (String field : fields) {
      boolean stamp = isStamp(field);
      stamped |= stamp;
      like += stamp || Cells.isNumberOrMissing(field) ? 1 : 0;
    }
    return stamped && like * 2 > fields.size();
  }

  /** Whether a cell can be a time. */
  static boolean isStamp(String cell) {
    return Cells.isDate(cell) || Cells.canBeEpoch(cell);
  }

  private Structure withHeader(List<LogicalLine> head) {
    int header = -1;
    for (int i = 0; i < head.size(); i++) {
      List<String> cells = Fields.withoutEmptyTail(Fields.split(head.get(i).text(), delimiter));
      if (isRow(head.get(i), cells)) {
        break;
      }
      if (cells.size() >= fields && cells.stream().noneMatch(Cells::isNumber)) {
        boolean names = !cells.contains("") && new HashSet<>(cells).size() == cells.size();
        if (names) {
          return new Structure(delimiter, fields, i);
        }
        header = i;
      }
    }
    return new Structure(delimiter, fields, header);
  }
}
