package org.rimebook.findings;

import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.record.Column;

/** The smallest step a wire's counter shows. */
final class CounterStep {

  /** Steps smaller than this are rounding [Hz or counts]. */
  private static final double ROUNDING = 1e-6;

  /** Share of the changes that may be smaller than a step (a reading worked out); own choice. */
  private static final double ODD_STEPS = 0.001;

  private static final int SAMPLE = 50_000;

  private CounterStep() {}

  /** In the unit of the record; 0 when nothing changes. */
  static double of(Column frequency) {
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

  /** In depth in the middle of what a wire shows [mm]. */
  static double mm(Scene scene, int wire) {
    return scene.facts().counterStep(wire) * mmPerUnit(scene, wire);
  }

  /** How much depth a unit of frequency is in the middle of what a wire shows [mm]. */
  private static double mmPerUnit(Scene scene, int wire) {
    Column frequency = scene.record().frequency(wire);
    int stride = Math.max(1, frequency.size() / SAMPLE);
    double[] slopes =
        IntStream.iterate(0, row -> row + stride < frequency.size(), row -> row + stride)
            .filter(row -> scene.depths().used(wire, row))
            .filter(row -> scene.depths().used(wire, row + stride))
            .mapToDouble(
                row ->
                    (scene.depths().depthMm(wire, row + stride) - scene.depths().depthMm(wire, row))
                        / (frequency.get(row + stride) - frequency.get(row)))
            .filter(Double::isFinite)
            .toArray();
    return slopes.length == 0 ? 0 : Math.abs(Robust.medianInPlace(slopes, slopes.length));
  }
}
