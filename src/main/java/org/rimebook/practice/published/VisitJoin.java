package org.rimebook.practice.published;

import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.rimebook.station.Interval;

/**
 * Takes service visits out of the depths before a method sees them: the methods suppose a bucket
 * that nobody empties. Readings inside a visit become missing, and each wire is shifted so that its
 * depth after the visit goes on from its depth before.
 */
public final class VisitJoin {

  /** How far from a visit readings still tell the depth beside it. */
  private static final long REACH_MS = 15 * 60_000;

  private VisitJoin() {}

  /**
   * Joins the depths across visits. The depth on either side is the median of the wire's readings
   * within 15 min, or else its nearest reading; a wire without readings on one side isn't shifted.
   *
   * @param levels the depths
   * @param visits when the bucket was handled, in the order of time, not overlapping
   */
  public static WireLevels across(WireLevels levels, List<Interval> visits) {
    long[] stampMs = new long[levels.size()];
    double[][] depthMm = new double[levels.wires()][levels.size()];
    for (int row = 0; row < stampMs.length; row++) {
      stampMs[row] = levels.stampMs(row);
      for (int wire = 0; wire < depthMm.length; wire++) {
        depthMm[wire][row] = levels.depthMm(wire, row);
      }
    }
    for (Interval visit : visits) {
      int from = levels.firstRowFrom(visit.fromMs());
      int to = levels.firstRowFrom(visit.toMs());
      int reachFrom = levels.firstRowFrom(visit.fromMs() - REACH_MS);
      int reachTo = levels.firstRowFrom(visit.toMs() + REACH_MS);
      for (double[] wire : depthMm) {
        join(wire, new Rows(reachFrom, from), new Rows(to, reachTo));
      }
    }
    return new WireLevels(stampMs, depthMm);
  }

  private static void join(double[] depthMm, Rows before, Rows after) {
    for (int row = before.to(); row < after.from(); row++) {
      depthMm[row] = Double.NaN;
    }
    int last = before.to() - 1;
    while (last >= 0 && Double.isNaN(depthMm[last])) {
      last--;
    }
    int next = after.from();
    while (next < depthMm.length && Double.isNaN(depthMm[next])) {
      next++;
    }
    if (last < 0 || next == depthMm.length) {
      return;
    }
    double shift =
        median(depthMm, Math.min(before.from(), last), before.to())
            - median(depthMm, after.from(), Math.max(after.to(), next + 1));
    for (int row = next; row < depthMm.length; row++) {
      depthMm[row] += shift;
    }
  }

  /** Median of the readings among rows, of which there is at least one. */
  private static double median(double[] depthMm, int from, int to) {
    // Missing readings are NaN, which the median leaves out.
    return new Median().evaluate(depthMm, from, to - from);
  }

  private record Rows(int from, int to) {}
}
