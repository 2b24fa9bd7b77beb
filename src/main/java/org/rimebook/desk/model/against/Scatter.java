package org.rimebook.desk.model.against;

import java.util.List;

/**
 * A scatter ready to be drawn.
 *
 * @param grid its cells; the axes fit the readings that are used
 * @param span rows on it
 * @param layers one a wire, or one for a pair
 */
public record Scatter(Grid grid, RowSpan span, List<Layer> layers) {

  /** Room about the readings, as a share of the axis. */
  private static final double ROOM = 0.05;

  public Scatter {
    layers = List.copyOf(layers);
  }

  /**
   * Cells that a plot has room for.
   *
   * @param columns at least 1
   * @param rows at least 1
   */
  public record Size(int columns, int rows) {}

  /**
   * The readings of one wire or pair.
   *
   * @param name what it is called
   * @param points all of them
   * @param parted those used, and those left out
   * @param selected those in the selection, used or not
   * @param spread how far they depart
   */
  public record Layer(
      Named name, Points points, Cloud.Parted parted, Cloud selected, Spread spread) {

    /** Those used. */
    public Cloud used() {
      return parted.used();
    }

    /** Those left out. */
    public Cloud leftOut() {
      return parted.leftOut();
    }
  }

  /**
   * The name of a layer.
   *
   * @param words its name
   * @param wire number of its wire in the sheet; of the first wire of a pair
   */
  public record Named(String words, int wire) {}

  /**
   * Points to make a layer of.
   *
   * @param name their name
   * @param points the points
   */
  public record Series(Named name, Points points) {}

  /**
   * Sorts points into a scatter with nothing selected.
   *
   * @param series the points
   * @param span rows to show
   * @param size cells there is room for
   * @param alwaysY held by the y axis whatever the readings
   */
  static Scatter of(List<Series> series, RowSpan span, Size size, Range alwaysY) {
    Range x = Range.EMPTY;
    Range y = alwaysY;
    for (Series each : series) {
      for (int row = span.from(); row < span.to(); row++) {
        if (each.points().used(row)) {
          x = x.with(each.points().x(row));
          y = y.with(each.points().y(row));
        }
      }
    }
    Grid grid = new Grid(x.padded(ROOM, 0.5), y.padded(ROOM, 0.05), size.columns(), size.rows());
    return new Scatter(grid, span, series.stream().map(each -> layer(each, span, grid)).toList());
  }

  private static Layer layer(Series series, RowSpan span, Grid grid) {
    Points points = series.points();
    return new Layer(
        series.name(),
        points,
        Cloud.parted(points, span, grid),
        Cloud.of(points, List.of(), grid),
        Spread.of(points, span));
  }

  /** Whether another was made of this one by selecting. */
  public boolean sameButSelection(Scatter other) {
    return layers.get(0).parted().equals(other.layers.get(0).parted());
  }

  /** The same with the readings of some rows selected. */
  Scatter selecting(List<RowSpan> rows) {
    List<Layer> changed =
        layers.stream()
            .map(
                l ->
                    new Layer(
                        l.name(),
                        l.points(),
                        l.parted(),
                        Cloud.of(l.points(), rows, grid),
                        l.spread()))
            .toList();
    return new Scatter(grid, span, changed);
  }
}
