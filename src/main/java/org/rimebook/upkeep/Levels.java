package org.rimebook.upkeep;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.rimebook.depth.Robust;
import org.rimebook.depth.WireDepths;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/** Depth that wires show beside an instant: medians of eleven readings. */
final class Levels {

  /** Readings taken, at least, and how far apart at most when there are enough; own choice. */
  private static final int READINGS = 11;

  private static final int LEAST = 3;
  private static final long NEAR_MS = 5_400_000;

  private final SeasonRecord record;
  private final WireDepths depths;

  Levels(SeasonRecord record, WireDepths depths) {
    this.record = record;
    this.depths = depths;
  }

  /** What a wire shows before a visit [mm]. */
  OptionalDouble before(int wire, Interval visit) {
    return beside(wire, record.firstRowAtOrAfter(visit.fromMs()) - 1, -1);
  }

  /** What a wire shows after a visit [mm]. */
  OptionalDouble after(int wire, Interval visit) {
    return beside(wire, record.firstRowAtOrAfter(visit.toMs()), 1);
  }

  /** What a wire shows when the record begins [mm]. */
  OptionalDouble first(int wire) {
    return beside(wire, 0, 1);
  }

  /** What a wire shows at the end of the record [mm]. */
  OptionalDouble last(int wire) {
    return beside(wire, record.size() - 1, -1);
  }

  /** Mean of the wires [mm]; empty when none is known. */
  static OptionalDouble mean(OptionalDouble... wires) {
    return Arrays.stream(wires)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .average();
  }

  private OptionalDouble beside(int wire, int first, int step) {
    double[] values = new double[READINGS];
    int count = 0;
    for (int row = first; row >= 0 && row < record.size() && count < READINGS; row += step) {
      long apartMs = Math.abs(record.stampMs(row) - record.stampMs(first));
      if (apartMs > NEAR_MS && (count == 0 || count >= LEAST)) {
        break;
      }
      if (depths.used(wire, row)) {
        values[count++] = depths.depthMm(wire, row);
      }
    }
    return count < LEAST
        ? OptionalDouble.empty()
        : OptionalDouble.of(Robust.medianInPlace(values, count));
  }
}
