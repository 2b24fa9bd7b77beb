package org.rimebook.export.network;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.svg.SVGGraphics2D;

/**
 * The catch of every season of a network, a line for each station: dots with two standard
 * uncertainties to either side, filled where the season is complete and decided on. Text is
 * measured by the program's own type, so the file is the same on every machine.
 */
final class NetworkFigure {

  private static final String TYPE = "/com/formdev/flatlaf/fonts/inter/Inter-Regular.otf";
  private static final Color INK = new Color(0x1a1a1a);
  private static final Color GRID = new Color(0xdddddd);
  private static final Color DOT = new Color(0x0072b2);
  private static final double COMPLETE_PCT = 95;
  private static final double DOT_PX = 7;
  private static final int WIDTH_PX = 760;
  private static final int ROW_PX = 20;
  private static final int REST_PX = 110;
  private static final int FILLED = 0;
  private static final int HOLLOW = 1;

  private final Font type;
  private final List<NetworkRow> rows;
  private final List<String> stations;

  private NetworkFigure(List<NetworkRow> rows) {
    this.rows = rows.stream().filter(row -> !row.catchMm().isEmpty()).toList();
    this.stations = this.rows.stream().map(NetworkRow::station).distinct().sorted().toList();
    this.type = type();
  }

  /** The figure as SVG. */
  static String svg(List<NetworkRow> rows) {
    NetworkFigure figure = new NetworkFigure(rows);
    int height = REST_PX + ROW_PX * Math.max(1, figure.stations.size());
    SVGGraphics2D graphics = new SVGGraphics2D(WIDTH_PX, height);
    graphics.setDefsKeyPrefix("n"); // the time of day when not set
    graphics.setFontFunction(family -> "Inter, sans-serif");
    figure.chart().draw(graphics, new Rectangle2D.Double(0, 0, WIDTH_PX, height));
    return graphics.getSVGDocument();
  }

  private static Font type() {
    try (InputStream in = NetworkFigure.class.getResourceAsStream(TYPE)) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the program's own type can't be used", e);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own type can't be read", e);
    }
  }

  private JFreeChart chart() {
    NumberAxis catchAxis = new NumberAxis("Catch of the season (mm)");
    catchAxis.setNumberFormatOverride(
        new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT)));
    catchAxis.setAutoRangeIncludesZero(true);
    SymbolAxis stationAxis = new SymbolAxis("", stations.toArray(String[]::new));
    stationAxis.setRange(-0.5, Math.max(1, stations.size()) - 0.5);
    stationAxis.setInverted(true);
    stationAxis.setGridBandsVisible(false);
    stationAxis.setTickLabelInsets(new RectangleInsets(2, 4, 2, 10)); // another type may be wider
    XYPlot plot = new XYPlot(dots(), catchAxis, stationAxis, renderer());
    plot.setBackgroundPaint(Color.WHITE);
    plot.setOutlineVisible(false);
    plot.setDomainGridlinePaint(GRID);
    plot.setRangeGridlinePaint(GRID);
    plot.setDomainGridlineStroke(new BasicStroke(0.6f));
    plot.setRangeGridlineStroke(new BasicStroke(0.6f));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    dress(catchAxis);
    dress(stationAxis);
    JFreeChart chart = new JFreeChart("", type.deriveFont(13f), plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(new RectangleInsets(8, 8, 8, 16));
    chart.addSubtitle(0, words());
    return chart;
  }

  private TextTitle words() {
    TextTitle words =
        new TextTitle(
            "Bars: two standard uncertainties. Filled: at least 95 % covered by readings, no"
                + " finding open; hollow: otherwise.",
            type.deriveFont(11f));
    words.setPaint(INK);
    words.setHorizontalAlignment(HorizontalAlignment.LEFT);
    return words;
  }

  private void dress(Axis axis) {
    axis.setTickLabelFont(type.deriveFont(11f));
    axis.setLabelFont(type.deriveFont(11f));
    axis.setTickLabelPaint(INK);
    axis.setLabelPaint(INK);
    axis.setAxisLinePaint(INK);
    axis.setTickMarkPaint(INK);
  }

  private XYIntervalSeriesCollection dots() {
    XYIntervalSeries filled = new XYIntervalSeries("filled", false, true);
    XYIntervalSeries hollow = new XYIntervalSeries("hollow", false, true);
    for (NetworkRow row : rows) {
      double catchMm = Double.parseDouble(row.catchMm());
      double twoU = row.uncertaintyMm().isEmpty() ? 0 : 2 * Double.parseDouble(row.uncertaintyMm());
      int y = stations.indexOf(row.station());
      (settled(row) ? filled : hollow).add(catchMm, catchMm - twoU, catchMm + twoU, y, y, y);
    }
    XYIntervalSeriesCollection all = new XYIntervalSeriesCollection();
    all.addSeries(filled);
    all.addSeries(hollow);
    return all;
  }

  private static boolean settled(NetworkRow row) {
    return !row.completenessPct().isEmpty()
        && Double.parseDouble(row.completenessPct()) >= COMPLETE_PCT
        && row.findingsOpen().equals("0");
  }

  private static XYErrorRenderer renderer() {
    XYErrorRenderer renderer = new XYErrorRenderer();
    renderer.setDrawYError(false);
    renderer.setErrorPaint(DOT);
    renderer.setErrorStroke(new BasicStroke(1.2f));
    renderer.setDrawOutlines(true);
    renderer.setUseOutlinePaint(true);
    renderer.setUseFillPaint(true);
    for (int series : new int[] {FILLED, HOLLOW}) {
      renderer.setSeriesShape(
          series, new Ellipse2D.Double(-DOT_PX / 2, -DOT_PX / 2, DOT_PX, DOT_PX));
      renderer.setSeriesPaint(series, DOT);
      renderer.setSeriesFillPaint(series, series == FILLED ? DOT : Color.WHITE);
      renderer.setSeriesOutlinePaint(series, DOT);
      renderer.setSeriesOutlineStroke(series, new BasicStroke(1.4f));
      renderer.setSeriesShapesFilled(series, true);
    }
    return renderer;
  }
}
