package org.rimebook.totals;

import java.util.EnumSet;
import java.util.Set;

/** What the catch series says of one hour, while it is being put together. */
final class HourCatch {

  private final int hour;

  /** Catch whose hour is known [mm]; for the last hour of an accumulation, all of it. */
  double catchMm;

  /** Catch of each half of the hour [mm], where {@link #halvesKnown}. */
  final double[] halfMm = new double[2];

  /** Whether it is known in which half each part of the catch fell, by the gauge itself. */
  boolean halvesKnown = true;

  /** Time of which the catch isn't known [ms]. */
  long unknownMs;

  /** First hour of the accumulation this hour belongs to; itself when it belongs to none. */
  int accumulatedFrom;

  /** Last hour of the accumulation this hour belongs to; itself when it belongs to none. */
  int accumulatedTo;

  /** Whether a judgement stands in for a measurement over an edge of this hour. */
  boolean estimated;

  final Set<Reason> reasons = EnumSet.noneOf(Reason.class);

  HourCatch(int hour) {
    this.hour = hour;
    this.accumulatedFrom = hour;
    this.accumulatedTo = hour;
  }

  /** Whether it has a total of its own: its catch is known, and isn't part of a later hour's. */
  boolean hasTotal() {
    boolean unknownThroughout =
        accumulatedFrom == hour && unknownMs >= Clock.HOUR_MS - HourlyCatch.TOLERANCE_MS;
    return accumulatedTo == hour && !unknownThroughout;
  }
}
