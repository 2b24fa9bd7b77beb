package org.rimebook.depth;

import java.util.Arrays;
import org.rimebook.record.Column;

/**
 * A wire's readings as depths, and what of them can't be a depth. Knows nothing of the notebook.
 */
final class ConvertedWire {

  /** Least stand-off of a spike [mm]; own choice: smaller ones don't matter to an hour's total. */
  static final double SPIKE_FLOOR_MM = 0.3;

  /** Least stand-off of a spike in steps of the logged frequency; own choice. */
  static final double SPIKE_FLOOR_STEPS = 3;

  /** Loggers resolve at least this [Hz]; larger steps are in the readings. Own choice. */
  private static final double COARSEST_STEP_HZ = 1;

  private final Column column;
  private final double hertzPerUnit;
  private final CalibrationSpans spans;
  private final double[] depthMm;
  private final byte[] screening;
  private final double usualNoiseMm;

  /** Smallest change of frequency the record shows [Hz]: its resolution, where that matters. */
  private double stepHz = COARSEST_STEP_HZ;

  /**
   * Converts a column to depth.
   *
   * @param hertzPerUnit what one unit of the column stands for [Hz]
   * @param range what the depth can be. Frequencies decide, since the curve may turn back
   * @param stated what the temperature does to the wire, as stated
   */
  ConvertedWire(
      Column column,
      double hertzPerUnit,
      CalibrationSpans spans,
      DepthRange range,
      StatedTemperature stated) {
    this.column = column;
    this.hertzPerUnit = hertzPerUnit;
    this.spans = spans;
    this.depthMm = new double[column.size()];
    this.screening = new byte[column.size()];
    for (int span = 0; span < spans.size(); span++) {
      convert(span, range, stated);
    }
    this.usualNoiseMm = SpikeScreen.usualNoiseMm(sound());
  }

  private void convert(int span, DepthRange range, StatedTemperature stated) {
    CalibrationCurve curve = spans.curve(span);
    double lowest = range.lowestHz(curve);
    double highest = range.highestHz(curve);
    double last = Double.NaN;
    for (int row = spans.firstRow(span); row < spans.endRow(span); row++) {
      double hertz = hertz(row);
      double depth = stated.takenOff(curve.depthMm(hertz), row);
      depthMm[row] = depth;
      if (!Double.isFinite(depth)) {
        depthMm[row] = Double.NaN;
        screening[row] = (byte) Screening.MISSING.ordinal();
      } else if (!(hertz >= lowest && hertz <= highest)) {
        screening[row] = (byte) Screening.OUT_OF_RANGE.ordinal();
      }
      double step = Math.abs(hertz - last);
      if (step > 0 && step < stepHz) {
        stepHz = step;
      }
      last = hertz;
    }
  }

  /** Depths that can be, in time order [mm]. */
  private double[] sound() {
    double[] sound = new double[depthMm.length];
    int size = 0;
    for (int row = 0; row < depthMm.length; row++) {
      if (screening[row] == 0) {
        sound[size++] = depthMm[row];
      }
    }
    return Arrays.copyOf(sound, size);
  }

  private double hertz(int row) {
    return column.get(row) * hertzPerUnit;
  }

  /** Depth by row [mm], NaN where it can't be computed; not to be changed. */
  double[] depthMm() {
    return depthMm;
  }

  /** Ordinal of {@link Screening} by row: used, missing or out of range; not to be changed. */
  byte[] screening() {
    return screening;
  }

  /** Number of the calibration that covers a row. */
  int calibration(int row) {
    return spans.spanOf(row);
  }

  /** Noise over the whole season [mm]. */
  double usualNoiseMm() {
    return usualNoiseMm;
  }

  /** Least stand-off of a spike at a row [mm]. */
  double spikeFloorMm(int row) {
    double slopeMmPerHz = spans.curve(spans.spanOf(row)).slopeMmPerHz(hertz(row));
    return Math.max(SPIKE_FLOOR_MM, SPIKE_FLOOR_STEPS * stepHz * slopeMmPerHz);
  }
}
