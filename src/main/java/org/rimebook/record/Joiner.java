package org.rimebook.record;

import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Joins the rows of all files into one record: rows with an impossible clock are set aside, the
 * others put into time order, and rows of one time made one. Rows of one time whose values agree,
 * as far as both have them, are one reading; of rows that disagree the first holds, by file name
 * and line, and the others are set aside as conflicts.
 */
final class Joiner {

  private final Rows rows;
  private final List<FileReading> readings;
  private final Wanted wanted;

  private Joiner(Rows rows, List<FileReading> readings, Wanted wanted) {
    this.wanted = wanted;
    this.rows = rows;
    this.readings = readings;
  }

  /** Indexes of the rows of the record, by time. */
  static int[] join(
      Rows rows, List<FileReading> readings, Wanted wanted, ZoneOffset stationOffset) {
    int[] sorted = byTime(rows);
    if (rows.inOrder() && rows.longestStepMs() <= ClockCheck.LEAP_MS) {
      return sorted;
    }
    boolean[] impossible = new ClockCheck(rows, readings, stationOffset).impossible(sorted);
    int[] possible = Arrays.stream(sorted).filter(row -> !impossible[row]).toArray();
    Joiner joiner = new Joiner(rows, readings, wanted);
    return joiner.withoutRepeats(possible);
  }

  private static int[] byTime(Rows rows) {
    int[] order = new int[rows.size()];
    Arrays.setAll(order, row -> row);
    if (rows.inOrder()) {
      return order;
    }
    return Arrays.stream(order)
        .boxed()
        .sorted(Comparator.comparingLong(rows::stampMs))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private int[] withoutRepeats(int[] order) {
    int kept = 0;
    for (int row : order) {
      if (kept > 0 && rows.stampMs(order[kept - 1]) == rows.stampMs(row)) {
        merge(order[kept - 1], row);
      } else {
        order[kept++] = row;
      }
    }
    return Arrays.copyOf(order, kept);
  }

  private void merge(int first, int repeat) {
    FileReading file = readings.get(fileOf(repeat));
    FileReading firstFile = readings.get(fileOf(first));
    for (int column = 0; column < rows.columns(); column++) {
      double here = rows.value(column, repeat);
      double there = rows.value(column, first);
      if (here != there && !Double.isNaN(here) && !Double.isNaN(there)) {
        String place = firstFile.file() + ", line " + rows.line(first);
        String detail =
            wanted.values().get(column) + " " + here + " where " + place + " has " + there;
        file.setAside(rows, repeat, LineReason.CONFLICTING_ROW, detail);
        return;
      }
    }
    for (int column = 0; column < rows.columns(); column++) {
      if (Double.isNaN(rows.value(column, first)) && !Double.isNaN(rows.value(column, repeat))) {
        rows.fill(column, first, rows.value(column, repeat));
      }
    }
    String where = file == firstFile ? "" : "taken from " + firstFile.file();
    file.setAside(rows, repeat, LineReason.REPEATED_ROW, where);
  }

  private int fileOf(int row) {
    return fileOf(readings, row);
  }

  /** The file a row is from. */
  static int fileOf(List<FileReading> readings, int row) {
    int low = 0;
    int high = readings.size() - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (row < readings.get(middle).endRow()) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
