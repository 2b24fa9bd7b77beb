package org.rimebook.desk.series;

import org.rimebook.station.Interval;

/**
 * What of a series falls in each pixel column of a stretch of time. Column c of w holds the
 * instants t with floor((t − from) · w / length) = c, exactly. Used again and again; confined to
 * one thread.
 */
public final class Columns {

  private final Pyramid pyramid;
  private final Pyramid.Extremes extremes = new Pyramid.Extremes();
  private int width;
  private int endIndex;
  private int[] edges = {0};
  private int[] first = new int[0];
  private int[] last = new int[0];
  private double[] least = new double[0];
  private double[] most = new double[0];
  private boolean[] joined = new boolean[0];

  /** Columns of a series; none until it is looked at. */
  public Columns(Pyramid pyramid) {
    this.pyramid = pyramid;
  }

  /** The series. */
  public Series series() {
    return pyramid.series();
  }

  /** Sorts the readings of a stretch of time into columns. */
  public void look(Interval stretch, int columns) {
    room(columns);
    Series series = pyramid.series();
    edges[0] = series.firstAtOrAfter(stretch.fromMs());
    endIndex = series.firstAtOrAfter(stretch.toMs(), edges[0], series.size());
    edges[columns] = endIndex;
    int taken = (endIndex - edges[0]) / Math.max(1, columns);
    for (int column = 1; column < columns; column++) {
      edges[column] = edge(stretch, column, edges[column - 1], taken);
      taken = edges[column] - edges[column - 1];
    }
    fill();
  }

  /** The same, of the stretch another series was last looked at, whose times may be the same. */
  public void look(Interval stretch, Columns other) {
    if (other == this || other.series().clock() != series().clock()) {
      look(stretch, other.width);
      return;
    }
    room(other.width);
    System.arraycopy(other.edges, 0, edges, 0, width + 1);
    endIndex = other.endIndex;
    fill();
  }

  private void room(int columns) {
    width = columns;
    if (first.length < columns) {
      edges = new int[columns + 1];
      first = new int[columns];
      last = new int[columns];
      least = new double[columns];
      most = new double[columns];
      joined = new boolean[columns];
    }
  }

  private void fill() {
    int before = -1;
    for (int column = 0; column < width; column++) {
      fill(column, edges[column], edges[column + 1]);
      if (first[column] >= 0) {
        joined[column] = before >= 0 && series().joins(before, first[column]);
        before = last[column];
      }
    }
  }

  /**
   * The first reading of a column, looked for outwards from where it lies when a column takes as
   * many readings as the one before: mostly next to it, which saves the memory the most reads.
   */
  private int edge(Interval stretch, int column, int from, int taken) {
    Series series = pyramid.series();
    long edgeMs = stretch.fromMs() - Math.floorDiv(-column * stretch.lengthMs(), (long) width);
    int low = Math.min(endIndex, from + taken);
    int high = low;
    int step = 1;
    while (low > from && series.timeMs(low - 1) >= edgeMs) {
      high = low - 1;
      low = Math.max(from, low - step);
      step *= 2;
    }
    step = 1;
    while (high < endIndex && series.timeMs(high) < edgeMs) {
      low = high + 1;
      high = Math.min(endIndex, high + step);
      step *= 2;
    }
    return series.firstAtOrAfter(edgeMs, low, high);
  }

  private void fill(int column, int from, int to) {
    pyramid.extremes(from, to, extremes);
    least[column] = extremes.least;
    most[column] = extremes.most;
    boolean holds = extremes.least <= extremes.most;
    first[column] = holds ? pyramid.firstValued(from) : -1;
    last[column] = holds ? pyramid.lastValued(to) : -1;
  }

  /** Columns. */
  public int width() {
    return width;
  }

  /** The first reading of the stretch, with or without a value. */
  public int firstIndex() {
    return edges[0];
  }

  /** The first reading after the stretch. */
  public int endIndex() {
    return endIndex;
  }

  /** Whether a column holds a value. */
  public boolean holds(int column) {
    return first[column] >= 0;
  }

  /** The first reading with a value in a column; -1 when there is none. */
  public int first(int column) {
    return first[column];
  }

  /** The last reading with a value in a column; -1 when there is none. */
  public int last(int column) {
    return last[column];
  }

  /** Whether a line may be drawn to a column that holds a value from the one before that does. */
  public boolean joined(int column) {
    return joined[column];
  }

  /** The least value in a column; positive infinity when there is none. */
  public double least(int column) {
    return least[column];
  }

  /** The greatest value in a column; negative infinity when there is none. */
  public double most(int column) {
    return most[column];
  }
}
