package org.rimebook.record;

import java.util.Arrays;
import java.util.Objects;

/** A column of numbers, one a row of the record; NaN where the row has none. Immutable. */
public final class Column {

  private final double[] values;
  private final int size;

  private Column(double[] values, int size) {
    this.values = values;
    this.size = size;
  }

  /** A column over a copy of the first {@code size} values. */
  public static Column copyOf(double[] values, int size) {
    return new Column(Arrays.copyOf(values, size), size);
  }

  /** A column over the first {@code size} of some values that nobody changes any more. */
  static Column over(double[] values, int size) {
    return new Column(values, size);
  }

  /** Rows. */
  public int size() {
    return size;
  }

  /** The value in a row, NaN where there is none. */
  public double get(int row) {
    Objects.checkIndex(row, size);
    return values[row];
  }

  /**
   * Copies the values of some rows.
   *
   * @param fromRow the first of them
   * @param into takes as many as it has room for
   */
  public void copy(int fromRow, double[] into) {
    Objects.checkFromIndexSize(fromRow, into.length, size);
    System.arraycopy(values, fromRow, into, 0, into.length);
  }
}
