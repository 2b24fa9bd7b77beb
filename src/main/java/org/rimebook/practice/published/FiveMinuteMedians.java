package org.rimebook.practice.published;

import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The median depth of each wire every five minutes. A block is centred on its mark, a whole five
 * minutes of the clock, and holds the stamps in (mark − 2.5 min, mark + 2.5 min]: its median then
 * stands for the level at the mark, whereas a block that ended there would lag it by two minutes.
 * Where readings are farther apart than five minutes each is its own median. The centring is ours;
 * it is in the methods' favour.
 */
final class FiveMinuteMedians {

  private static final long STEP_MS = 300_000;
  private static final long HALF_MS = STEP_MS / 2;

  private FiveMinuteMedians() {}

  /** Rows at the marks that have a reading of any wire; NaN for a wire without one there. */
  static WireLevels of(WireLevels levels) {
    long[] markMs = new long[levels.size()];
    double[][] medianMm = new double[levels.wires()][levels.size()];
    int marks = 0;
    int from = 0;
    while (from < levels.size()) {
      long mark = markMs(levels.stampMs(from));
      int to = levels.firstRowFrom(mark + HALF_MS + 1);
      boolean any = false;
      for (int wire = 0; wire < levels.wires(); wire++) {
        medianMm[wire][marks] = medianMm(levels, wire, from, to);
        any |= !Double.isNaN(medianMm[wire][marks]);
      }
      markMs[marks] = mark;
      marks += any ? 1 : 0;
      from = to;
    }
    int size = marks;
    return new WireLevels(
        Arrays.copyOf(markMs, size),
        Arrays.stream(medianMm).map(wire -> Arrays.copyOf(wire, size)).toArray(double[][]::new));
  }

  private static long markMs(long stampMs) {
    return Math.floorDiv(stampMs + HALF_MS - 1, STEP_MS) * STEP_MS;
  }

  private static double medianMm(WireLevels levels, int wire, int from, int to) {
    double[] present = new double[to - from];
    int size = 0;
    for (int row = from; row < to; row++) {
      if (levels.has(wire, row)) {
        present[size++] = levels.depthMm(wire, row);
      }
    }
    return new Median().evaluate(present, 0, size);
  }
}
