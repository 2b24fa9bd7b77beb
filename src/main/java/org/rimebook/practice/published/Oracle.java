package org.rimebook.practice.published;

import java.time.Duration;
import java.util.BitSet;

/**
 * What the mean of the wires can give when somebody tells which hours are wet. The level at an hour
 * boundary between wet hours is the mean of the readings in a window about it; the level of a run
 * of dry hours is the mean of all its readings, and stands at both its ends. A wet hour caught the
 * difference of its boundaries, as it comes; a dry hour caught nothing. Temperature and evaporation
 * aren't corrected, so the oracle can be beaten where they matter.
 *
 * <p>Not a published method: a bound on what averaging alone can do.
 */
public final class Oracle implements CatchMethod {

  private final BitSet wetHour;
  private final long halfWindowMs;

  /**
   * @param wetHour hours of the grid in which anything fell; copied
   * @param window length of the window, centred on a boundary, both ends included; positive. Five
   *     minutes suit calm air and fifteen wind
   */
  public Oracle(BitSet wetHour, Duration window) {
    if (window.isNegative() || window.isZero()) {
      throw new IllegalArgumentException("a window of " + window);
    }
    this.wetHour = (BitSet) wetHour.clone();
    this.halfWindowMs = window.toMillis() / 2;
  }

  @Override
  public String name() {
    return "oracle";
  }

  @Override
  public double[] hourlyCatchMm(WireLevels levels, HourGrid grid) {
    WireLevels mean = WireMean.of(levels);
    double[] hourly = new double[grid.hours()];
    if (mean.size() == 0) {
      return hourly;
    }
    BoundaryLevels boundaries = new BoundaryLevels(mean);
    for (int hour = 0; hour < hourly.length; hour++) {
      if (wetHour.get(hour)) {
        hourly[hour] = boundaryMm(boundaries, grid, hour + 1) - boundaryMm(boundaries, grid, hour);
      }
    }
    return hourly;
  }

  /** Level at a boundary [mm]: of the dry run it touches, else of the window. */
  private double boundaryMm(BoundaryLevels boundaries, HourGrid grid, int boundary) {
    int first = wetHour.previousSetBit(boundary - 1) + 1;
    int next = wetHour.nextSetBit(boundary);
    int end = next < 0 ? grid.hours() : Math.min(next, grid.hours());
    long fromMs = grid.boundaryMs(first);
    long toMs = grid.boundaryMs(end);
    if (first < end && boundaries.anyIn(fromMs, toMs)) {
      long halfMs = (toMs - fromMs) / 2;
      return boundaries.aroundMm(fromMs + halfMs, halfMs, distance -> 1);
    }
    return boundaries.aroundMm(grid.boundaryMs(boundary), halfWindowMs, distance -> 1);
  }
}
