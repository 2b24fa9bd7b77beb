package org.rimebook.depth;

import java.util.List;
import org.rimebook.depth.OffsetHabit.WireHabit;
import org.rimebook.depth.PresentRuns.Hole;

/**
 * Looks up how a wire stood to the others just before and after a hole: over half an hour, or five
 * readings where they come more slowly, but no more than ten sampling intervals then. All three are
 * this project's own choice: long enough for a median, short against the tilt the sun brings.
 */
final class Anchors {

  private static final long USUAL_SPAN_MS = 1_800_000;
  private static final int FEW_READINGS = 5;
  private static final int MOST_INTERVALS = 10;
  private static final int MOST_READINGS = 31;

  private final UsableRows rows;
  private final double[][] depthMm;
  private final PresentRuns[] runs;
  private final List<WireHabit> habits;
  private double stampSum;
  private double othersSum;
  private final double[] offset = new double[MOST_READINGS];

  Anchors(UsableRows rows, double[][] depthMm, PresentRuns[] runs, List<WireHabit> habits) {
    this.habits = habits;
    this.rows = rows;
    this.depthMm = depthMm;
    this.runs = runs;
  }

  /** The anchor before a hole, by the wires of a mask, which are there throughout. */
  Anchor before(Hole hole, int othersMask) {
    int edge = hole.first() - 1;
    int stop = runs[hole.wire()].runFirst(edge);
    for (int wire = 0; wire < runs.length; wire++) {
      if ((othersMask >>> wire & 1) != 0) {
        stop = Math.max(stop, runs[wire].runFirst(edge));
      }
    }
    int size = 0;
    for (int i = edge; i >= stop && reaches(edge, i, size); i--) {
      size = take(hole.wire(), othersMask, i, size);
    }
    return anchor(size);
  }

  /**
   * The anchor after a hole. It reads on over further short holes of the wire, so that a wire that
   * comes and goes isn't judged by one reading.
   */
  Anchor after(Hole hole, int othersMask) {
    int edge = hole.last() + 1;
    int stop = rows.size() - 1;
    for (int wire = 0; wire < runs.length; wire++) {
      if ((othersMask >>> wire & 1) != 0) {
        stop = Math.min(stop, runs[wire].runLast(edge));
      }
    }
    int calibration = rows.calibration(hole.wire(), edge);
    int size = 0;
    for (int i = edge; i <= stop && reaches(edge, i, size); i++) {
      if (rows.calibration(hole.wire(), i) == calibration) {
        size = take(hole.wire(), othersMask, i, size);
      }
    }
    return anchor(size);
  }

  private boolean reaches(int edge, int index, int taken) {
    long spanMs = Math.abs(rows.stampMs(index) - rows.stampMs(edge));
    return taken < MOST_READINGS
        && (spanMs <= USUAL_SPAN_MS
            || taken < FEW_READINGS && spanMs <= MOST_INTERVALS * rows.intervalMs(edge));
  }

  private int take(int wire, int othersMask, int index, int size) {
    if (!rows.used(wire, index)) {
      return size;
    }
    double expected = expectedMm(wire, othersMask, index);
    offset[size] = depthMm[wire][index] - expected;
    stampSum += rows.stampMs(index);
    othersSum += expected;
    return size + 1;
  }

  /**
   * Depth [mm] the wires of a mask let expect of another, but for a constant: their mean, and the
   * tilt that the difference of two of them tells.
   */
  double expectedMm(int wire, int othersMask, int index) {
    double sum = 0;
    for (int other = 0; other < depthMm.length; other++) {
      if ((othersMask >>> other & 1) != 0) {
        sum += depthMm[other][index];
      }
    }
    int count = Integer.bitCount(othersMask);
    double slope = habits.get(wire).tiltSlope();
    double tilt =
        slope == 0 || count < 2 ? 0 : slope * OffsetHabit.differenceMm(depthMm, wire, index);
    return sum / count + tilt;
  }

  private Anchor anchor(int size) {
    double offsetMm = Robust.medianInPlace(offset, size);
    double sdMm = Robust.sdInPlace(offset, size);
    Anchor anchor = new Anchor(offsetMm, stampSum / size, othersSum / size, sdMm, size);
    stampSum = 0;
    othersSum = 0;
    return anchor;
  }
}
