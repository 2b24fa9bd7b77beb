package org.rimebook.record;

import java.util.Arrays;

/** A column of numbers, one a row of the record; NaN where the row has none. Immutable. */
public final class Column {

  private final double[] values;

  private Column(double[] values) {
    this.values = values;
  }

  /** A column over a copy of the first {@code size} values. */
  public static Column copyOf(double[] values, int size) {
    return new Column(Arrays.copyOf(values, size));
  }

  /** Rows. */
  public int size() {
    return values.length;
  }

  /** The value in a row, NaN where there is none. */
  public double get(int row) {
    return values[row];
  }
}
