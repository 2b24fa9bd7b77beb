package org.rimebook.desk.series;

/** Values over time, read in place. Times increase strictly; a value is NaN where there is none. */
public interface Series {

  /** Readings. */
  int size();

  /** When a reading was taken [ms since epoch]. */
  long timeMs(int index);

  /** What the times are of: two series of the same have the same times at the same indices. */
  default Object clock() {
    return this;
  }

  /** The value of a reading; NaN where there is none. */
  double value(int index);

  /**
   * The values of some readings, as {@link #value} gives them one by one.
   *
   * @param fromIndex the first of them
   * @param into takes as many as it has room for
   */
  default void copy(int fromIndex, double[] into) {
    for (int i = 0; i < into.length; i++) {
      into[i] = value(fromIndex + i);
    }
  }

  /**
   * Whether a line may be drawn between two readings that follow each other but for readings
   * without a value. Not across missing time.
   */
  boolean joins(int before, int after);

  /** The first reading at or after an instant; {@link #size()} when there is none. */
  default int firstAtOrAfter(long epochMs) {
    return firstAtOrAfter(epochMs, 0, size());
  }

  /** The same, known to lie between two indices, the second included. */
  default int firstAtOrAfter(long epochMs, int fromIndex, int toIndex) {
    int low = fromIndex;
    int high = toIndex;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (timeMs(middle) < epochMs) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
