package org.rimebook.desk.model.against;

/**
 * Cells over a plot; cell 0 is at the least x and the least y, and numbers run along x first.
 *
 * @param x what the columns cover; has a length
 * @param y what the rows cover; has a length
 * @param columns at least 1
 * @param rows at least 1
 */
public record Grid(Range x, Range y, int columns, int rows) {

  /** The cell of a point; one outside goes to the nearest cell at the edge. */
  public int cell(double xValue, double yValue) {
    return rowOf(yValue) * columns + columnOf(xValue);
  }

  /** Whether a point lies in the plot. */
  public boolean holds(double xValue, double yValue) {
    return x.holds(xValue) && y.holds(yValue);
  }

  /** Column of a value, kept inside. */
  public int columnOf(double value) {
    return place(value, x, columns);
  }

  /** Row of a value, kept inside. */
  public int rowOf(double value) {
    return place(value, y, rows);
  }

  private static int place(double value, Range range, int cells) {
    double at = (value - range.from()) / (range.to() - range.from()) * cells;
    return (int) Math.max(0, Math.min(cells - 1, at));
  }
}
