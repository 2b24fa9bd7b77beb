package org.rimebook.desk.model.against;

import java.util.Arrays;
import java.util.List;

/**
 * Points sorted into the cells of a grid. Every point with a place is in one: outliers keep their
 * own cell, and points outside the plot are kept at its edge. Immutable.
 */
public final class Cloud {

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
   * Readings that are used and readings that are left out, apart.
   *
   * @param used of readings that are used
   * @param leftOut of readings that are left out
   */
  public record Parted(Cloud used, Cloud leftOut) {}

  /**
   * Sorts all points in some rows.
   *
   * @param points the points
   * @param spans rows to take them from
   * @param grid cells over the plot
   */
  public static Cloud of(Points points, List<RowSpan> spans, Grid grid) {
    Sides all = new Sides(grid);
    for (RowSpan span : spans) {
      for (int row = span.from(); row < span.to(); row++) {
        all.add(points, row);
      }
    }
    return all.cloud();
  }

  /** Sorts the points in a row span by whether they are used. */
  static Parted parted(Points points, RowSpan span, Grid grid) {
    Sides used = new Sides(grid);
    Sides leftOut = new Sides(grid);
    for (int row = span.from(); row < span.to(); row++) {
      (points.used(row) ? used : leftOut).add(points, row);
    }
    return new Parted(used.cloud(), leftOut.cloud());
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

  /** What lies in the plot and what beyond. */
  private static final class Sides {
    private final Grid grid;
    private final Sorting inside;
    private final Sorting beyond;

    Sides(Grid grid) {
      this.grid = grid;
      this.inside = new Sorting(grid);
      this.beyond = new Sorting(grid);
    }

    void add(Points points, int row) {
      double x = points.x(row);
      double y = points.y(row);
      if (!Double.isNaN(x) && !Double.isNaN(y)) {
        (grid.holds(x, y) ? inside : beyond).add(grid.cell(x, y), row);
      }
    }

    Cloud cloud() {
      return new Cloud(grid, inside, beyond);
    }
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
