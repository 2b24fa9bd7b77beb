package org.rimebook.depth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rimebook.depth.OffsetHabit.WireHabit;
import org.rimebook.depth.PresentRuns.Hole;

/**
 * Bridges every hole in the wires of one segment, so that the level can be the mean of all of them
 * throughout. In a hole a wire follows the mean of the others at its offset from them, which runs
 * straight from what it was before the hole to what it is after it, with the tilt between that
 * {@link OffsetHabit} tells; so the wire's absence makes no step and lets no tilt through. A wire
 * that comes back further off than is plausible has been disturbed, and one with a new calibration
 * says nothing across the change: both are set back onto their old offset.
 *
 * <p>Holes are bridged from the short to the long, each by the wires that are there throughout.
 * Since neighbouring rows of a segment share a wire, there is always one more that can be bridged:
 * the wire that takes over at the end of the longest run from the start is spanned by that run up
 * to where it begins.
 */
final class SegmentBridges {

  /**
   * Least change of a wire's offset over an absence that means it was disturbed [mm]; own choice.
   */
  private static final double LEAST_DISTURBANCE_MM = 1;

  /** Usual changes of offset that make a disturbance; own choice. */
  private static final double DISTURBANCE_SD = 8;

  /** Standard errors by which two medians may differ by chance; own choice. */
  private static final double CHANCE_SD = 5;

  /**
   * Share of a change of level by which a wire's calibration may be off. Duchon, Wade and Cole 2003
   * found the mean of three wires within 1 %.
   */
  private static final double CALIBRATION_SHARE = 0.01;

  private final UsableRows rows;
  private final double[][] depthMm;
  private final Anchors anchors;
  private final List<WireHabit> habits;
  private final PresentRuns[] runs;
  private final int first;
  private final int last;

  /**
   * @param depthMm depth [mm] by wire and index; changed within the segment
   * @param habits what to expect of each wire
   */
  SegmentBridges(UsableRows rows, double[][] depthMm, List<WireHabit> habits, int first, int last) {
    this.rows = rows;
    this.depthMm = depthMm;
    this.habits = habits;
    this.first = first;
    this.last = last;
    this.runs = new PresentRuns[depthMm.length];
    for (int wire = 0; wire < depthMm.length; wire++) {
      runs[wire] = new PresentRuns(wire, first, last, rows);
    }
    this.anchors = new Anchors(rows, depthMm, runs, habits);
  }

  /** Bridges every hole. */
  void bridge() {
    List<Hole> open = new ArrayList<>();
    for (PresentRuns run : runs) {
      open.addAll(run.holes());
    }
    // The order says nothing of the wires' own order, so that permuting them changes nothing.
    open.sort(Comparator.comparingInt(Hole::length).thenComparingInt(Hole::first));
    while (!open.isEmpty()) {
      open = bridgeOnce(open);
    }
  }

  /** Bridges what can be bridged now; returns what is still open. */
  private List<Hole> bridgeOnce(List<Hole> open) {
    List<Hole> left = new ArrayList<>();
    int next = 0;
    while (next < open.size()) {
      Hole hole = open.get(next);
      int end = next;
      int others = othersThroughout(hole);
      // Wires lost and back together are bridged alike, each without the other.
      while (end < open.size()
          && open.get(end).first() == hole.first()
          && open.get(end).length() == hole.length()) {
        if (others == 0) {
          left.add(open.get(end));
        } else {
          bridge(open.get(end), others);
        }
        end++;
      }
      next = end;
    }
    if (left.size() == open.size()) {
      throw new IllegalStateException("no wire spans any of " + left.size() + " holes");
    }
    return left;
  }

  /** Mask of the wires that are present over a hole and one reading beyond on both sides. */
  private int othersThroughout(Hole hole) {
    int from = Math.max(first, hole.first() - 1);
    int to = Math.min(last, hole.last() + 1);
    int mask = 0;
    for (int wire = 0; wire < runs.length; wire++) {
      if (runs[wire].holdsBoth(from, to)) {
        mask |= 1 << wire;
      }
    }
    return mask;
  }

  private void bridge(Hole hole, int others) {
    if (hole.first() == first) {
      fill(hole, others, new Line(0, anchors.after(hole, others).offsetMm(), 0));
    } else if (hole.last() == last) {
      fill(hole, others, new Line(0, anchors.before(hole, others).offsetMm(), 0));
    } else {
      join(hole, others);
    }
    runs[hole.wire()].close(hole);
  }

  private void join(Hole hole, int others) {
    Anchor before = anchors.before(hole, others);
    Anchor after = anchors.after(hole, others);
    double change = after.offsetMm() - before.offsetMm();
    boolean newCalibration =
        rows.calibration(hole.wire(), hole.first() - 1)
            != rows.calibration(hole.wire(), hole.last() + 1);
    if (newCalibration
        || Math.abs(change) > plausibleChangeMm(hole.wire(), others, before, after)) {
      for (int i = hole.last() + 1; i <= last; i++) {
        depthMm[hole.wire()][i] -= change;
      }
      change = 0;
    }
    double slope = change / (after.stampMs() - before.stampMs());
    fill(hole, others, new Line(before.stampMs(), before.offsetMm(), slope));
  }

  /** An offset that changes evenly with time. */
  private record Line(double stampMs, double offsetMm, double slopeMmPerMs) {
    double at(long atMs) {
      return offsetMm + slopeMmPerMs * (atMs - stampMs);
    }
  }

  private void fill(Hole hole, int others, Line offset) {
    for (int i = hole.first(); i <= hole.last(); i++) {
      depthMm[hole.wire()][i] =
          anchors.expectedMm(hole.wire(), others, i) + offset.at(rows.stampMs(i));
    }
  }

  private double plausibleChangeMm(int wire, int others, Anchor before, Anchor after) {
    double scatterMm = Math.max(before.sdMm(), after.sdMm());
    double chanceMm =
        CHANCE_SD * Math.hypot(before.standardErrorMm(scatterMm), after.standardErrorMm(scatterMm));
    double loadMm = CALIBRATION_SHARE * Math.abs(after.expectedMm() - before.expectedMm());
    double usualMm = DISTURBANCE_SD * habits.get(wire).usualChangeMm(Integer.bitCount(others));
    return Math.max(LEAST_DISTURBANCE_MM, usualMm) + chanceMm + loadMm;
  }

  /** Level [mm] at an index of the segment, once it is bridged: the mean of the wires. */
  double levelMm(int index) {
    double sum = 0;
    int wires = 0;
    for (int wire = 0; wire < runs.length; wire++) {
      if (!runs[wire].isEmpty()) {
        sum += depthMm[wire][index];
        wires++;
      }
    }
    return sum / wires;
  }
}
