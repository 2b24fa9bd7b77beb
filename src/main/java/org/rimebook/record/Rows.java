package org.rimebook.record;

import java.util.Arrays;

/** Rows of the record as they are read, file after file, in primitive columns that grow. */
final class Rows {

  private static final int LEAST_CAPACITY = 1 << 10;
  private static final int MOST_EXPECTED = 1 << 26;

  private final double[][] values;
  private final long expected;
  private long[] stampsMs;
  private int[] lines;
  private short[] missing;
  private int size;
  private boolean inOrder = true;
  private long longestStepMs;

  /**
   * No rows yet.
   *
   * @param columns values of a row
   * @param expected rows to make room for; there may be more or fewer
   */
  Rows(int columns, long expected) {
    int capacity = (int) Math.max(LEAST_CAPACITY, Math.min(expected, MOST_EXPECTED));
    this.expected = expected;
    values = new double[columns][capacity];
    stampsMs = new long[capacity];
    lines = new int[capacity];
    missing = new short[capacity];
  }

  /**
   * Adds a row.
   *
   * @param line its line, 1-based
   * @param row its values, one a column; copied
   * @param missingFields how many of its fields held nothing or a missing token
   */
  void add(long stampMs, long line, double[] row, int missingFields) {
    if (size == stampsMs.length) {
      grow();
    }
    if (size > 0) {
      long step = stampMs - stampsMs[size - 1];
      inOrder &= step > 0;
      longestStepMs = Math.max(longestStepMs, step);
    }
    stampsMs[size] = stampMs;
    lines[size] = Math.toIntExact(line);
    missing[size] = (short) missingFields;
    for (int column = 0; column < row.length; column++) {
      values[column][size] = row[column];
    }
    size++;
  }

  /** Adds all rows of another file; copied. */
  void append(Rows more) {
    if (more.size == 0) {
      return;
    }
    if (size + more.size > stampsMs.length) {
      resize(Math.addExact(size, more.size));
    }
    inOrder &= more.inOrder;
    longestStepMs = Math.max(longestStepMs, more.longestStepMs);
    if (size > 0) {
      long step = more.stampsMs[0] - stampsMs[size - 1];
      inOrder &= step > 0;
      longestStepMs = Math.max(longestStepMs, step);
    }
    System.arraycopy(more.stampsMs, 0, stampsMs, size, more.size);
    System.arraycopy(more.lines, 0, lines, size, more.size);
    System.arraycopy(more.missing, 0, missing, size, more.size);
    for (int column = 0; column < values.length; column++) {
      System.arraycopy(more.values[column], 0, values[column], size, more.size);
    }
    size += more.size;
  }

  private void grow() {
    resize(Math.toIntExact(Math.min(size * 2L, Integer.MAX_VALUE - 8L)));
  }

  private void resize(int capacity) {
    stampsMs = Arrays.copyOf(stampsMs, capacity);
    lines = Arrays.copyOf(lines, capacity);
    missing = Arrays.copyOf(missing, capacity);
    for (int column = 0; column < values.length; column++) {
      values[column] = Arrays.copyOf(values[column], capacity);
    }
  }

  /** Forgets the rows from one on. */
  void truncate(int newSize) {
    size = newSize;
  }

  int size() {
    return size;
  }

  /** Rows read as a share of those expected, at most 1. */
  double shareRead() {
    return Math.min(1, size / (double) Math.max(1, expected));
  }

  long stampMs(int row) {
    return stampsMs[row];
  }

  /** A copy of all stamps [ms since epoch]. */
  long[] stampsMs() {
    return Arrays.copyOf(stampsMs, size);
  }

  /** A copy of the lines of all rows. */
  int[] lines() {
    return Arrays.copyOf(lines, size);
  }

  int line(int row) {
    return lines[row];
  }

  int missingFields(int row) {
    return missing[row];
  }

  /** Whether every row was later than the one before it, also of rows forgotten since. */
  boolean inOrder() {
    return inOrder;
  }

  /** The longest step from a row to the next [ms], also of rows forgotten since. */
  long longestStepMs() {
    return longestStepMs;
  }

  /** A column as it stands; no value may be filled in after. */
  Column column(int column) {
    return Column.over(values[column], size);
  }

  int columns() {
    return values.length;
  }

  double value(int column, int row) {
    return values[column][row];
  }

  /** Fills in a value another row of the same time has. */
  void fill(int column, int row, double value) {
    values[column][row] = value;
  }
}
