package org.rimebook.desk.model;

/**
 * The values from one to another; nothing when the least is above the greatest.
 *
 * @param least the least
 * @param most the greatest
 */
public record Extent(double least, double most) {

  /** No value. */
  public static final Extent NONE = new Extent(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

  /** Whether it is nothing. */
  public boolean isEmpty() {
    return least > most;
  }

  /** Both, and what is between. */
  public Extent and(Extent other) {
    return new Extent(Math.min(least, other.least), Math.max(most, other.most));
  }

  /** With room above and below, at least so much in all. */
  public Extent padded(double share, double atLeast) {
    double room = Math.max(share * (most - least), (atLeast - (most - least)) / 2);
    return new Extent(least - room, most + room);
  }
}
