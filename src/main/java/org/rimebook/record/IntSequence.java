package org.rimebook.record;

import java.util.Arrays;

/** An immutable sequence of whole numbers, one a row. */
public final class IntSequence {

  private final int[] values;

  private IntSequence(int[] values) {
    this.values = values;
  }

  /** A sequence over a copy of the first {@code size} values. */
  public static IntSequence copyOf(int[] values, int size) {
    return new IntSequence(Arrays.copyOf(values, size));
  }

  /** A sequence over numbers that nobody changes any more. */
  static IntSequence over(int[] values) {
    return new IntSequence(values);
  }

  /** Length. */
  public int size() {
    return values.length;
  }

  /** The value at an index. */
  public int get(int index) {
    return values[index];
  }
}
