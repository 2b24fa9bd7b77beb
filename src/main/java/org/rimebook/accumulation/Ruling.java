package org.rimebook.accumulation;

import org.rimebook.station.Interval;

/**
 * What the notebook says about a stretch of time, after overlapping entries are settled.
 *
 * @param kind what it says
 * @param interval the stretch
 * @param givenMm the analyst's own total [mm]; 0 unless the kind is {@link Kind#ESTIMATE}
 */
public record Ruling(Kind kind, Interval interval, double givenMm) {

  /** Kinds, the strongest first: where two entries overlap, the stronger holds. */
  public enum Kind {
    /** The analyst's own total replaces the gauge's. */
    ESTIMATE,
    /** No change of level across it is catch. */
    VISIT,
    /** Nothing fell inside. */
    DRY,
    /** What fell inside is known in total, its timing isn't. */
    LATE
  }
}
