package org.rimebook.findings;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/**
 * Readings that something other than weather moved on all wires alike.
 *
 * @param firstRow first such reading, with a margin
 * @param endRow first reading after them, with a margin
 * @param falls falls no weather makes
 * @param rises rises no weather makes
 * @param beforeMm depth of each wire before them [mm]; NaN where unknown
 * @param afterMm depth of each wire after them [mm]; NaN where unknown
 * @param lowestMm the lowest depth in them, the middle one of the wires' [mm]
 */
record Disturbance(
    int firstRow,
    int endRow,
    int falls,
    int rises,
    double[] beforeMm,
    double[] afterMm,
    double lowestMm) {

  /** Readings a level beside it is taken from, and how far away at most; own choice. */
  private static final int SIDE_ROWS = 11;

  private static final long SIDE_MS = 5_400_000;

  /** A reading is off by so much [mm]; own choice. */
  private static final double OFF_MM = 2;

  private static final int LEAST_ROWS = 3;

  static Disturbance of(CommonSteps steps, SeasonRecord record, int[] events, int[] rows) {
    int falls = (int) Arrays.stream(events).filter(row -> steps.stepMm(row) < 0).count();
    return new Disturbance(
        rows[0],
        rows[1],
        falls,
        events.length - falls,
        side(steps, record, rows[0], -1),
        side(steps, record, rows[1], 1),
        lowest(steps, rows));
  }

  private static double[] side(CommonSteps steps, SeasonRecord record, int row, int direction) {
    double[] levels = new double[steps.wires()];
    int first = direction < 0 ? row - 1 : row;
    for (int wire = 0; wire < levels.length; wire++) {
      double[] values = new double[SIDE_ROWS];
      int count = 0;
      int looked = 0;
      for (int at = first;
          at >= 0 && at < steps.size() && looked < 2 * SIDE_ROWS;
          at += direction) {
        boolean near = Math.abs(record.stampMs(at) - record.stampMs(first)) <= SIDE_MS;
        double depth = steps.reading(wire, at);
        if (!Double.isNaN(depth) && count < SIDE_ROWS && (near || count < LEAST_ROWS)) {
          values[count++] = depth;
        }
        looked++;
      }
      levels[wire] = count < LEAST_ROWS ? Double.NaN : Robust.medianInPlace(values, count);
    }
    return levels;
  }

  private static double lowest(CommonSteps steps, int[] rows) {
    return IntStream.range(rows[0], rows[1])
        .mapToDouble(row -> median(wireDepths(steps, row)))
        .filter(Double::isFinite)
        .min()
        .orElse(Double.NaN);
  }

  /**
   * Share of the readings that are off in which all wires are off alike, within half of how far
   * they are; 1 when none is off.
   */
  double alike(CommonSteps steps) {
    int off = 0;
    int alike = 0;
    for (int row = firstRow; row < endRow; row++) {
      double[] moved = wireDepths(steps, row);
      Arrays.setAll(moved, wire -> moved[wire] - beforeMm[wire]);
      double[] known = Arrays.stream(moved).filter(Double::isFinite).sorted().toArray();
      double middle = Math.abs(median(moved));
      if (known.length > 1 && middle > OFF_MM) {
        off++;
        alike += known[known.length - 1] - known[0] <= OFF_MM + middle / 2 ? 1 : 0;
      }
    }
    return off == 0 ? 1 : (double) alike / off;
  }

  static double[] wireDepths(CommonSteps steps, int row) {
    return IntStream.range(0, steps.wires()).mapToDouble(w -> steps.reading(w, row)).toArray();
  }

  /** The middle of the known ones; NaN when none is. */
  static double median(double[] values) {
    double[] known = Arrays.stream(values).filter(Double::isFinite).toArray();
    return known.length == 0 ? Double.NaN : Robust.medianInPlace(known, known.length);
  }

  /** Level before [mm]; NaN when unknown. */
  double fromMm() {
    return median(beforeMm);
  }

  /** Level after [mm]; NaN when unknown. */
  double toMm() {
    return median(afterMm);
  }

  /** Change across, the middle one of the wires' [mm]; empty when no wire tells. */
  OptionalDouble changeMm() {
    double[] changes = new double[beforeMm.length];
    Arrays.setAll(changes, wire -> afterMm[wire] - beforeMm[wire]);
    double change = median(changes);
    return Double.isNaN(change) ? OptionalDouble.empty() : OptionalDouble.of(change);
  }

  Interval span(SeasonRecord record) {
    return new Interval(
        record.stampMs(firstRow),
        endRow < record.size() ? record.stampMs(endRow) : record.stampMs(endRow - 1) + 1);
  }
}
