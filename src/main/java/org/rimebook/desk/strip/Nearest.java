package org.rimebook.desk.strip;

import org.rimebook.desk.series.Series;

/** Finds the reading a pointer means. */
final class Nearest {

  private static final int LOOKED_AT = 8;

  private Nearest() {}

  /**
   * The reading with a value nearest to an instant, when it lies within a pixel column or the
   * instant lies between it and one it is joined to; -1 otherwise.
   */
  static int of(Series series, long epochMs, long columnMs) {
    int after = series.firstAtOrAfter(epochMs);
    int right = present(series, after, 1);
    int left = present(series, after - 1, -1);
    if (left >= 0 && right >= 0 && series.joins(left, right)) {
      return series.timeMs(right) - epochMs < epochMs - series.timeMs(left) ? right : left;
    }
    if (right >= 0 && series.timeMs(right) - epochMs <= columnMs) {
      return right;
    }
    return left >= 0 && epochMs - series.timeMs(left) <= columnMs ? left : -1;
  }

  private static int present(Series series, int from, int step) {
    int i = from;
    for (int seen = 0; seen < LOOKED_AT && i >= 0 && i < series.size(); seen++, i += step) {
      if (!Double.isNaN(series.value(i))) {
        return i;
      }
    }
    return -1;
  }
}
