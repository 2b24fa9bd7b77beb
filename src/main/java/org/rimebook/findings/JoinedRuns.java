package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Runs of rows of which something holds, joined across interruptions shorter than what lies on
 * either side, so that a wire that flaps makes one run and single lost readings make none.
 */
final class JoinedRuns {

  /**
   * A run.
   *
   * @param fromRow its first row
   * @param toRow the row after its last
   * @param hits rows of it of which it holds
   */
  record Run(int fromRow, int toRow, int hits) {

    int length() {
      return toRow - fromRow;
    }
  }

  private JoinedRuns() {}

  /**
   * The runs among rows from 0 on.
   *
   * @param holds what holds of their first and last row
   * @param rows number of rows
   * @param mostBetween longest interruption that may be joined across
   */
  static List<Run> of(IntPredicate holds, int rows, int mostBetween) {
    List<Run> runs = new ArrayList<>();
    int row = 0;
    while (row < rows) {
      if (!holds.test(row)) {
        row++;
        continue;
      }
      int end = row + 1;
      while (end < rows && holds.test(end)) {
        end++;
      }
      join(runs, new Run(row, end, end - row), mostBetween);
      row = end;
    }
    return runs;
  }

  private static void join(List<Run> runs, Run next, int mostBetween) {
    Run joined = next;
    while (!runs.isEmpty()) {
      Run before = runs.get(runs.size() - 1);
      int between = joined.fromRow - before.toRow;
      if (between > Math.min(mostBetween, Math.min(before.hits, joined.hits))) {
        break;
      }
      joined = new Run(before.fromRow, joined.toRow, before.hits + joined.hits);
      runs.remove(runs.size() - 1);
    }
    runs.add(joined);
  }
}
