package org.rimebook.practice.published;

import java.util.function.LongToDoubleFunction;

/** Averages of one level around instants. */
final class BoundaryLevels {

  private final WireLevels level;

  BoundaryLevels(WireLevels level) {
    this.level = level;
  }

  /**
   * The average around an instant: of the readings no farther off than the reach, each weighted by
   * its distance. Where there are none it is taken around the last reading before the instant
   * instead, or the first of all, so that what came in meanwhile belongs to the time of the first
   * reading after.
   *
   * @param weight weight of a reading by its signed distance [ms], positive within the reach
   * @return level [mm]
   */
  double aroundMm(long instantMs, long reachMs, LongToDoubleFunction weight) {
    int from = level.firstRowFrom(instantMs - reachMs);
    int to = level.firstRowFrom(instantMs + reachMs + 1);
    if (from == to) {
      return aroundMm(level.stampMs(Math.max(0, to - 1)), reachMs, weight);
    }
    double sum = 0;
    double weights = 0;
    for (int row = from; row < to; row++) {
      double share = weight.applyAsDouble(level.stampMs(row) - instantMs);
      sum += share * level.depthMm(0, row);
      weights += share;
    }
    return sum / weights;
  }

  /** Whether any reading is stamped from one instant to another, both included. */
  boolean anyIn(long fromMs, long toMs) {
    return level.firstRowFrom(fromMs) < level.firstRowFrom(toMs + 1);
  }
}
