package org.rimebook.record;

import java.util.Arrays;

/** Rows of the record as they are read, file after file, in primitive columns that grow. */
final class Rows {

  private static final int FIRST_CAPACITY = 1 << 14;

  private final double[][] values;
  private long[] stampsMs = new long[FIRST_CAPACITY];
  private int[] lines = new int[FIRST_CAPACITY];
  private short[] missing = new short[FIRST_CAPACITY];
  private int size;

  Rows(int columns) {
    values = new double[columns][FIRST_CAPACITY];
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
    stampsMs[size] = stampMs;
    lines[size] = Math.toIntExact(line);
    missing[size] = (short) missingFields;
    for (int column = 0; column < row.length; column++) {
      values[column][size] = row[column];
    }
    size++;
  }

  private void grow() {
    int capacity = Math.toIntExact(Math.min(size * 2L, Integer.MAX_VALUE - 8L));
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

  long stampMs(int row) {
    return stampsMs[row];
  }

  int line(int row) {
    return lines[row];
  }

  int missingFields(int row) {
    return missing[row];
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
