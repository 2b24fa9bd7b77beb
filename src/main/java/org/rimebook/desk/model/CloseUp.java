package org.rimebook.desk.model;

import java.util.Optional;
import org.rimebook.station.Interval;

/** Where the strips go to show a stretch of time. */
final class CloseUp {

  private static final int WIDEST = 40;

  private CloseUp() {}

  /**
   * The stretch with as much again on either side; nowhere when it is on screen already, large
   * enough to be seen, so that stepping from row to row doesn't move the strips each time.
   */
  static Optional<Interval> of(Interval visible, Interval wanted) {
    boolean inside = visible.fromMs() <= wanted.fromMs() && visible.toMs() >= wanted.toMs();
    if (inside && visible.lengthMs() <= WIDEST * wanted.lengthMs()) {
      return Optional.empty();
    }
    long margin = wanted.lengthMs();
    return Optional.of(new Interval(wanted.fromMs() - margin, wanted.toMs() + margin));
  }
}
