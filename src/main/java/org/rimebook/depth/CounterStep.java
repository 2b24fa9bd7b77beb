package org.rimebook.depth;

import java.util.stream.IntStream;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;

/** The smallest step a wire's counter shows. */
public final class CounterStep {

  /** Steps smaller than this are rounding [Hz or counts]. */
  private static final double ROUNDING = 1e-6;

  /** Share of the changes that may be smaller than a step (a reading worked out); own choice. */
  private static final double ODD_STEPS = 0.001;

  private static final int SAMPLE = 50_000;

  private CounterStep() {}

  /** In the unit of the record; 0 when nothing changes. */
  public static double of(Column frequency) {
    int stride = Math.max(1, frequency.size() / SAMPLE);
    double[] steps =
        IntStream.range(0, frequency.size() / stride)
            .map(i -> i * stride)
            .filter(row -> row + 1 < frequency.size())
            .mapToDouble(row -> Math.abs(frequency.get(row + 1) - frequency.get(row)))
            .filter(size -> size > ROUNDING)
            .sorted()
            .toArray();
    return steps.length == 0 ? 0 : steps[(int) (ODD_STEPS * steps.length)];
  }

  /**
   * A depth that goes with a unit of frequency, in the middle of what a wire shows [mm]; 0 when
   * nothing changes.
   *
   * @param record the record
   * @param depths its depths
   * @param wire index of the wire
   */
  public static double mmPerUnit(SeasonRecord record, WireDepths depths, int wire) {
    Column frequency = record.frequency(wire);
    int stride = Math.max(1, frequency.size() / SAMPLE);
    double[] slopes =
        IntStream.iterate(0, row -> row + stride < frequency.size(), row -> row + stride)
            .filter(row -> depths.used(wire, row))
            .filter(row -> depths.used(wire, row + stride))
            .mapToDouble(
                row ->
                    (depths.depthMm(wire, row + stride) - depths.depthMm(wire, row))
                        / (frequency.get(row + stride) - frequency.get(row)))
            .filter(Double::isFinite)
            .toArray();
    return slopes.length == 0 ? 0 : Math.abs(Robust.medianInPlace(slopes, slopes.length));
  }
}
