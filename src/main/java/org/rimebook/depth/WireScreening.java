package org.rimebook.depth;

import java.util.Arrays;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;

/** Depth and screening of one wire, built up step by step. */
final class WireScreening {

  /** Least stand-off of a spike [mm]; own choice: smaller ones don't matter to an hour's total. */
  static final double SPIKE_FLOOR_MM = 0.3;

  /** Least stand-off of a spike in steps of the logged frequency; own choice. */
  static final double SPIKE_FLOOR_STEPS = 3;

  /** Readings further apart than this many sampling intervals aren't compared; own choice. */
  static final int SPIKE_GAP_INTERVALS = 5;

  /** Loggers resolve at least this [Hz]; larger steps are in the readings. Own choice. */
  private static final double COARSEST_STEP_HZ = 1;

  private static final byte USED = (byte) Screening.USED.ordinal();

  private final Column column;
  private final double hertzPerUnit;
  private final CalibrationSpans spans;
  private final double[] depthMm;
  private final byte[] screening;

  /** Smallest change of frequency the record shows [Hz]: its resolution, where that matters. */
  private double stepHz = COARSEST_STEP_HZ;

  /**
   * Converts a column to depth. No reading is screened yet but the missing ones.
   *
   * @param hertzPerUnit what one unit of the column stands for [Hz]
   */
  WireScreening(Column column, double hertzPerUnit, CalibrationSpans spans) {
    this.column = column;
    this.hertzPerUnit = hertzPerUnit;
    this.spans = spans;
    this.depthMm = new double[column.size()];
    this.screening = new byte[column.size()];
    for (int span = 0; span < spans.size(); span++) {
      convert(spans.curve(span), spans.firstRow(span), spans.endRow(span));
    }
  }

  private void convert(CalibrationCurve curve, int fromRow, int toRow) {
    double last = Double.NaN;
    for (int row = fromRow; row < toRow; row++) {
      double hertz = hertz(row);
      double depth = curve.depthMm(hertz);
      depthMm[row] = depth;
      if (!Double.isFinite(depth)) {
        depthMm[row] = Double.NaN;
        screening[row] = (byte) Screening.MISSING.ordinal();
      }
      double step = Math.abs(hertz - last);
      if (step > 0 && step < stepHz) {
        stepHz = step;
      }
      last = hertz;
    }
  }

  private double hertz(int row) {
    return column.get(row) * hertzPerUnit;
  }

  /** Leaves out the readings still used in the rows [from, to). */
  void leaveOut(int fromRow, int toRow, Screening reason) {
    for (int row = fromRow; row < toRow; row++) {
      if (screening[row] == USED) {
        screening[row] = (byte) reason.ordinal();
      }
    }
  }

  /** Leaves out readings outside the range. Frequencies decide, since the curve may turn back. */
  void leaveOutOfRange(DepthRange range) {
    for (int span = 0; span < spans.size(); span++) {
      double lowest = range.lowestHz(spans.curve(span));
      double highest = range.highestHz(spans.curve(span));
      for (int row = spans.firstRow(span); row < spans.endRow(span); row++) {
        double hertz = hertz(row);
        if (!(hertz >= lowest && hertz <= highest)) {
          leaveOut(row, row + 1, Screening.OUT_OF_RANGE);
        }
      }
    }
  }

  /** Leaves out isolated spikes among the readings still used. */
  void leaveOutSpikes(SeasonRecord record, Sampling sampling) {
    int[] rows = usedRows();
    double[] depths = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      depths[i] = depthMm[rows[i]];
    }
    boolean[] spike = new boolean[rows.length];
    SpikeScreen screen = new SpikeScreen(depths, i -> spikeFloorMm(rows[i]));
    int start = 0;
    for (int i = 1; i <= rows.length; i++) {
      if (i == rows.length || !comparable(rows[i - 1], rows[i], record, sampling)) {
        screen.mark(start, i, spike);
        start = i;
      }
    }
    for (int i = 0; i < rows.length; i++) {
      if (spike[i]) {
        screening[rows[i]] = (byte) Screening.SPIKE.ordinal();
      }
    }
  }

  private int[] usedRows() {
    int[] rows = new int[screening.length];
    int size = 0;
    for (int row = 0; row < screening.length; row++) {
      if (screening[row] == USED) {
        rows[size++] = row;
      }
    }
    return Arrays.copyOf(rows, size);
  }

  private double spikeFloorMm(int row) {
    double slopeMmPerHz = spans.curve(spans.spanOf(row)).slopeMmPerHz(hertz(row));
    return Math.max(SPIKE_FLOOR_MM, SPIKE_FLOOR_STEPS * stepHz * slopeMmPerHz);
  }

  /** A visit always lies between readings that it changed, so its readings count as a gap. */
  private boolean comparable(int row, int next, SeasonRecord record, Sampling sampling) {
    if (spans.spanOf(row) != spans.spanOf(next)) {
      return false;
    }
    for (int between = row + 1; between < next; between++) {
      if (screening[between] == Screening.SERVICE_VISIT.ordinal()) {
        return false;
      }
    }
    long apartMs = record.stampMs(next) - record.stampMs(row);
    long intervalMs = Math.max(sampling.intervalMs(row), sampling.intervalMs(next));
    return apartMs <= SPIKE_GAP_INTERVALS * intervalMs;
  }

  double[] depthMm() {
    return depthMm;
  }

  byte[] screening() {
    return screening;
  }
}
