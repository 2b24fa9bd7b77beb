package org.rimebook.desk.strip;

import java.util.BitSet;
import org.rimebook.desk.series.Columns;
import org.rimebook.desk.series.Series;

/** Finds which columns a series covers, by readings or by lines between them. */
final class Coverage {

  /** Rows looked at beyond the view, so that lines run in from outside it. */
  static final int MARGIN = 4;

  private Coverage() {}

  /** Adds the columns a series covers. */
  static void cover(Columns columns, BitSet covered) {
    Series series = columns.series();
    int before = neighbour(series, columns.firstIndex() - 1, -1);
    int beforeColumn = -1;
    for (int column = 0; column < columns.width(); column++) {
      if (!columns.holds(column)) {
        continue;
      }
      boolean joined =
          beforeColumn >= 0
              ? columns.joined(column)
              : before >= 0 && series.joins(before, columns.first(column));
      if (joined) {
        covered.set(Math.max(0, beforeColumn), column);
      }
      covered.set(column);
      before = columns.last(column);
      beforeColumn = column;
    }
    int after = neighbour(series, columns.endIndex(), 1);
    if (before >= 0 && after >= 0 && series.joins(before, after)) {
      covered.set(Math.max(0, beforeColumn), columns.width());
    }
  }

  private static int neighbour(Series series, int from, int step) {
    int i = from;
    for (int seen = 0; seen < MARGIN; seen++, i += step) {
      if (i < 0 || i >= series.size()) {
        return -1;
      }
      if (!Double.isNaN(series.value(i))) {
        return i;
      }
    }
    return -1;
  }
}
