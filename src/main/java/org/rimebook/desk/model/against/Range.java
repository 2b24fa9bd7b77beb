package org.rimebook.desk.model.against;

/**
 * A stretch of an axis.
 *
 * @param from lower end, in the unit of the axis
 * @param to upper end, in the unit of the axis; not below {@code from}
 */
public record Range(double from, double to) {

  /** Holds nothing; the start of a search for the least and the most. */
  public static final Range EMPTY = new Range(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

  /** Widened to hold a value; unchanged by NaN. */
  public Range with(double value) {
    if (Double.isNaN(value) || value >= from && value <= to) {
      return this;
    }
    return new Range(Math.min(from, value), Math.max(to, value));
  }

  /** Whether it holds nothing. */
  public boolean isEmpty() {
    return from > to;
  }

  /** Whether a value lies in it, the ends included. */
  public boolean holds(double value) {
    return value >= from && value <= to;
  }

  /**
   * With room at both ends, so that nothing lies on the frame.
   *
   * @param share of its length
   * @param least room at each end, in the unit of the axis; keeps it from having no length
   */
  public Range padded(double share, double least) {
    if (isEmpty()) {
      return new Range(0, 1);
    }
    double room = Math.max(least, share * (to - from));
    return new Range(from - room, to + room);
  }
}
