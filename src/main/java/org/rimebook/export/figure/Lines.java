package org.rimebook.export.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** The lines of one strip, each with its name and look, and the range their values cover. */
final class Lines {

  private static final int MOST_LETTERS = 18;

  private final DefaultXYDataset points = new DefaultXYDataset();
  private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
  private final List<KeyItem> key = new ArrayList<>();
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;

  Lines() {
    renderer.setDrawSeriesLineAsPath(true);
    renderer.setDefaultSeriesVisibleInLegend(false);
  }

  /**
   * Adds a line.
   *
   * @param name its name in the key; none when empty
   * @param curve its points
   * @param colour its colour
   * @param stroke its stroke
   */
  void add(String name, Curve curve, Color colour, BasicStroke stroke) {
    include(curve.low(), curve.high());
    add(name, curve.points(), colour, stroke);
  }

  /** Adds a line through points, x and y; the range isn't widened. */
  void add(String name, double[][] drawn, Color colour, BasicStroke stroke) {
    int series = points.getSeriesCount();
    points.addSeries(series, drawn);
    renderer.setSeriesPaint(series, colour);
    renderer.setSeriesStroke(series, stroke);
    if (!name.isEmpty()) {
      key.add(new KeyItem(shortened(Glyphs.visible(name)), colour, stroke));
    }
  }

  /** Adds dots in ink, x and y; the range isn't widened. */
  void dots(String name, double[][] drawn, Shape dot) {
    int series = points.getSeriesCount();
    points.addSeries(series, drawn);
    renderer.setSeriesPaint(series, FigureLook.INK);
    renderer.setSeriesLinesVisible(series, false);
    renderer.setSeriesShapesVisible(series, true);
    renderer.setSeriesShape(series, dot);
    key.add(KeyItem.dot(name));
  }

  private static String shortened(String name) {
    return name.length() <= MOST_LETTERS ? name : name.substring(0, MOST_LETTERS - 1) + "…";
  }

  /** Widens the range to hold a value. */
  void include(double least, double most) {
    low = Math.min(low, least);
    high = Math.max(high, most);
  }

  DefaultXYDataset points() {
    return points;
  }

  XYLineAndShapeRenderer renderer() {
    return renderer;
  }

  List<KeyItem> key() {
    return key;
  }

  /** Lowest value, with a margin. */
  double low() {
    return high >= low ? low - margin() : 0;
  }

  /** Highest value, with a margin. */
  double high() {
    return high >= low ? high + margin() : 1;
  }

  private double margin() {
    double span = high - low;
    return span > 0 ? 0.05 * span : Math.max(0.5, 0.05 * Math.abs(high));
  }
}
