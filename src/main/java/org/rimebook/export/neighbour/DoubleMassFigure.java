package org.rimebook.export.neighbour;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;
import org.jfree.svg.SVGGraphics2D;
import org.rimebook.totals.neighbour.Comparison;
import org.rimebook.totals.neighbour.Pair;
import org.rimebook.totals.neighbour.SlopeBreak;

/** The double-mass curve as SVG, the same on every machine; a line where its slope breaks. */
public final class DoubleMassFigure {

  private static final String TYPE = "/com/formdev/flatlaf/fonts/inter/Inter-Regular.otf";
  private static final Color INK = new Color(0x1a1a1a);
  private static final Color GRID = new Color(0xdddddd);
  private static final Color CURVE = new Color(0x0072b2);
  private static final int SIDE_PX = 520;

  private DoubleMassFigure() {}

  /**
   * The figure.
   *
   * @param station name of the station
   * @param comparison the comparison
   */
  public static String svg(String station, Comparison comparison) {
    SVGGraphics2D graphics = new SVGGraphics2D(SIDE_PX, SIDE_PX);
    graphics.setDefsKeyPrefix("d"); // the time of day when not set
    graphics.setFontFunction(family -> "Inter, sans-serif");
    chart(station, comparison).draw(graphics, new Rectangle2D.Double(0, 0, SIDE_PX, SIDE_PX));
    return graphics.getSVGDocument();
  }

  private static JFreeChart chart(String station, Comparison comparison) {
    Font type = type().deriveFont(11f);
    NumberAxis other = axis("Neighbours, accumulated (mm)", type);
    NumberAxis own = axis(station + ", accumulated (mm)", type);
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setSeriesPaint(0, CURVE);
    renderer.setSeriesStroke(0, new BasicStroke(1.5f));
    renderer.setDrawSeriesLineAsPath(true);
    double[][] points = points(comparison);
    DefaultXYDataset curve = new DefaultXYDataset();
    curve.addSeries("curve", points);
    XYPlot plot = new XYPlot(curve, other, own, renderer);
    plot.setBackgroundPaint(Color.WHITE);
    plot.setOutlineVisible(false);
    plot.setDomainGridlinePaint(GRID);
    plot.setRangeGridlinePaint(GRID);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    comparison
        .slopeBreak()
        .filter(SlopeBreak::significant)
        .ifPresent(found -> plot.addDomainMarker(marker(comparison, found)));
    JFreeChart chart = new JFreeChart("", type, plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new RectangleInsets(12, 8, 8, 16));
    return chart;
  }

  private static ValueMarker marker(Comparison comparison, SlopeBreak found) {
    double at =
        comparison.pairs().stream()
            .filter(pair -> pair.span().toMs() <= found.atMs())
            .mapToDouble(Pair::otherMm)
            .sum();
    return new ValueMarker(
        at,
        INK,
        new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0));
  }

  private static double[][] points(Comparison comparison) {
    int size = comparison.pairs().size();
    double[][] points = new double[2][size + 1];
    for (int i = 0; i < size; i++) {
      points[0][i + 1] = points[0][i] + comparison.pairs().get(i).otherMm();
      points[1][i + 1] = points[1][i] + comparison.pairs().get(i).ownMm();
    }
    return points;
  }

  private static NumberAxis axis(String label, Font type) {
    NumberAxis axis = new NumberAxis(label);
    axis.setNumberFormatOverride(
        new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT)));
    axis.setTickLabelFont(type);
    axis.setLabelFont(type);
    axis.setTickLabelPaint(INK);
    axis.setLabelPaint(INK);
    axis.setAxisLinePaint(INK);
    axis.setTickMarkPaint(INK);
    return axis;
  }

  private static Font type() {
    try (InputStream in = DoubleMassFigure.class.getResourceAsStream(TYPE)) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the program's own type can't be used", e);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own type can't be read", e);
    }
  }
}
