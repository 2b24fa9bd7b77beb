package org.rimebook.depth;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/** Depth that wires show beside an instant: medians of eleven readings. */
public final class LevelsBeside {

  /** Readings taken, at least, and how far apart at most when there are enough; own choice. */
  private static final int READINGS = 11;

  private static final int LEAST = 3;
  private static final long NEAR_MS = 5_400_000;

  private final SeasonRecord record;
  private final WireDepths depths;

  /**
   * Depths of a season.
   *
   * @param record its readings
   * @param depths their depths
   */
  public LevelsBeside(SeasonRecord record, WireDepths depths) {
    this.record = record;
    this.depths = depths;
  }

  /** What a wire shows before a visit [mm]. */
  public OptionalDouble before(int wire, Interval visit) {
    return beside(wire, record.firstRowAtOrAfter(visit.fromMs()) - 1, -1);
  }

  /** What a wire shows after a visit [mm]. */
  public OptionalDouble after(int wire, Interval visit) {
    return beside(wire, record.firstRowAtOrAfter(visit.toMs()), 1);
  }

  /** What a wire shows when the record begins [mm]. */
  public OptionalDouble first(int wire) {
    return beside(wire, 0, 1);
  }

  /** What a wire shows at the end of the record [mm]. */
  public OptionalDouble last(int wire) {
    return beside(wire, record.size() - 1, -1);
  }

  /** Mean of the wires [mm]; empty when none is known. */
  public static OptionalDouble mean(OptionalDouble... wires) {
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
