package org.rimebook.export.figure;

import java.util.Arrays;
import org.rimebook.station.Interval;

/**
 * A line through many values, thinned to what a figure can show: of each column of its width the
 * first, lowest, highest and last value stay. Breaks stay breaks.
 */
final class Curve {

  private final Interval span;
  private final int columns;
  private double[] x = new double[256];
  private double[] y = new double[256];
  private int size;
  private int column = -1;
  private final double[] heldX = new double[4];
  private final double[] heldY = new double[4];
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  /**
   * @param span what the figure covers; values outside are left out
   * @param columns how finely it is drawn
   */
  Curve(Interval span, int columns) {
    this.span = span;
    this.columns = columns;
  }

  /** Adds a value; not a number makes a break. */
  void add(long epochMs, double value) {
    if (epochMs < span.fromMs() || epochMs > span.toMs()) {
      return;
    }
    if (Double.isNaN(value)) {
      interrupt();
      return;
    }
    int at = (int) ((epochMs - span.fromMs()) * (double) columns / span.lengthMs());
    if (at != column) {
      flush();
      column = at;
      Arrays.fill(heldX, epochMs);
      Arrays.fill(heldY, value);
    }
    hold(epochMs, value);
    low = Math.min(low, value);
    high = Math.max(high, value);
  }

  private void hold(long epochMs, double value) {
    if (value < heldY[1]) {
      heldX[1] = epochMs;
      heldY[1] = value;
    }
    if (value > heldY[2]) {
      heldX[2] = epochMs;
      heldY[2] = value;
    }
    heldX[3] = epochMs;
    heldY[3] = value;
  }

  /** Ends the line; the next value starts another. */
  void interrupt() {
    flush();
    if (size > 0 && !Double.isNaN(y[size - 1])) {
      put(x[size - 1], Double.NaN);
    }
  }

  private void flush() {
    if (column < 0) {
      return;
    }
    column = -1;
    int early = heldX[1] <= heldX[2] ? 1 : 2;
    put(heldX[0], heldY[0]);
    for (int held : new int[] {early, 3 - early, 3}) {
      if (heldX[held] != x[size - 1] || heldY[held] != y[size - 1]) {
        put(heldX[held], heldY[held]);
      }
    }
  }

  private void put(double atX, double atY) {
    if (size == x.length) {
      x = Arrays.copyOf(x, 2 * size);
      y = Arrays.copyOf(y, 2 * size);
    }
    x[size] = atX;
    y[size] = atY;
    size++;
  }

  /** The points, x and y; breaks have no y. */
  double[][] points() {
    flush();
    return new double[][] {Arrays.copyOf(x, size), Arrays.copyOf(y, size)};
  }

  /** The lowest value; positive infinity when there is none. */
  double low() {
    return low;
  }

  /** The highest value; negative infinity when there is none. */
  double high() {
    return high;
  }
}
