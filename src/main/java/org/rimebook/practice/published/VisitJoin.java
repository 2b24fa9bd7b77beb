package org.rimebook.practice.published;

import java.util.Arrays;
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
   * within 15 min. A wire that has none on one side is shifted as the others are on average; if no
   * wire has any on both, each goes by its nearest readings, and isn't shifted when there are none.
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
      Rows before = new Rows(levels.firstRowFrom(visit.fromMs() - REACH_MS), from);
      Rows after = new Rows(to, levels.firstRowFrom(visit.toMs() + REACH_MS));
      join(depthMm, before, after);
    }
    return new WireLevels(stampMs, depthMm);
  }

  private static void join(double[][] depthMm, Rows before, Rows after) {
    double[] shiftMm = new double[depthMm.length];
    double sum = 0;
    int beside = 0;
    for (int wire = 0; wire < depthMm.length; wire++) {
      Arrays.fill(depthMm[wire], before.to(), after.from(), Double.NaN);
      shiftMm[wire] = before.medianMm(depthMm[wire]) - after.medianMm(depthMm[wire]);
      if (!Double.isNaN(shiftMm[wire])) {
        sum += shiftMm[wire];
        beside++;
      }
    }
    for (int wire = 0; wire < depthMm.length; wire++) {
      if (Double.isNaN(shiftMm[wire])) {
        shiftMm[wire] = beside > 0 ? sum / beside : farShiftMm(depthMm[wire], before, after);
      }
      for (int row = after.from(); row < depthMm[wire].length; row++) {
        depthMm[wire][row] += shiftMm[wire];
      }
    }
  }

  /** Shift by the nearest readings; 0 when there is none on one side. */
  private static double farShiftMm(double[] depthMm, Rows before, Rows after) {
    int last = before.to() - 1;
    while (last >= 0 && Double.isNaN(depthMm[last])) {
      last--;
    }
    int next = after.from();
    while (next < depthMm.length && Double.isNaN(depthMm[next])) {
      next++;
    }
    if (last < 0 || next == depthMm.length) {
      return 0;
    }
    double beforeMm = new Rows(Math.min(before.from(), last), before.to()).medianMm(depthMm);
    return beforeMm - new Rows(after.from(), Math.max(after.to(), next + 1)).medianMm(depthMm);
  }

  private record Rows(int from, int to) {

    /** Median of the readings among the rows, missing ones left out; NaN when there is none. */
    double medianMm(double[] depthMm) {
      return new Median().evaluate(depthMm, from, to - from);
    }
  }
}
