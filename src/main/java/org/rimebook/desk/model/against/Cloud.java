package org.rimebook.desk.model.against;

import java.util.Arrays;
import java.util.List;

/**
 * Points sorted into the cells of a grid. Every point with a place is in one: outliers keep their
 * own cell, and points outside the plot are kept at its edge. Immutable.
 */
public final class Cloud {

  /** Which points a cloud is made of. */
  public enum Of {
    /** Of readings that are used. */
    USED,
    /** Of readings that are left out. */
    LEFT_OUT,
    /** Of all readings. */
    ALL
  }

  private final Grid grid;
  private final int[] cell;
  private final int[] count;
  private final int[] row;
  private final boolean[] outside;

  private Cloud(Grid grid, Sorting inside, Sorting beyond) {
    this.grid = grid;
    int most = inside.cells() + beyond.cells();
    cell = new int[most];
    count = new int[most];
    row = new int[most];
    outside = new boolean[most];
    take(inside, 0, false);
    take(beyond, inside.cells(), true);
  }

  /**
   * Sorts points.
   *
   * @param points the points
   * @param spans rows to take them from
   * @param grid cells over the plot
   * @param which which of the points
   */
  public static Cloud of(Points points, List<RowSpan> spans, Grid grid, Of which) {
    Sorting inside = new Sorting(grid);
    Sorting beyond = new Sorting(grid);
    for (RowSpan span : spans) {
      for (int row = span.from(); row < span.to(); row++) {
        double x = points.x(row);
        double y = points.y(row);
        boolean wanted = which == Of.ALL || points.used(row) == (which == Of.USED);
        if (wanted && !Double.isNaN(x) && !Double.isNaN(y)) {
          (grid.holds(x, y) ? inside : beyond).add(grid.cell(x, y), row);
        }
      }
    }
    return new Cloud(grid, inside, beyond);
  }

  private void take(Sorting sorting, int at, boolean isOutside) {
    int next = at;
    for (int candidate = 0; candidate < sorting.count.length; candidate++) {
      if (sorting.count[candidate] > 0) {
        cell[next] = candidate;
        count[next] = sorting.count[candidate];
        row[next] = sorting.row[candidate];
        outside[next] = isOutside;
        next++;
      }
    }
  }

  /** The grid. */
  public Grid grid() {
    return grid;
  }

  /** Cells with points in them. */
  public int size() {
    return cell.length;
  }

  /** Column of the cell. */
  public int column(int index) {
    return cell[index] % grid.columns();
  }

  /** Row of the cell, 0 at the least y. */
  public int line(int index) {
    return cell[index] / grid.columns();
  }

  /** Points in the cell. */
  public int count(int index) {
    return count[index];
  }

  /** Row of the record of its first point. */
  public int row(int index) {
    return row[index];
  }

  /** Whether its points lie outside the plot, beyond this cell at the edge. */
  public boolean outside(int index) {
    return outside[index];
  }

  /** Points in the fullest cell; 0 when there is none. */
  public int most() {
    return Arrays.stream(count).max().orElse(0);
  }

  private static final class Sorting {
    private final int[] count;
    private final int[] row;

    Sorting(Grid grid) {
      count = new int[grid.columns() * grid.rows()];
      row = new int[count.length];
    }

    void add(int cell, int recordRow) {
      if (count[cell]++ == 0) {
        row[cell] = recordRow;
      }
    }

    int cells() {
      return (int) Arrays.stream(count).filter(c -> c > 0).count();
    }
  }
}
