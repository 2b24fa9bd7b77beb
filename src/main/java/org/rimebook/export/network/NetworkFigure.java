package org.rimebook.export.network;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.rimebook.export.chart.ChartLook;
import org.rimebook.export.chart.SvgChart;

/**
 * The catch of every season of a network, a line for each station: dots with two standard
 * uncertainties to either side, filled where the season is complete and decided on.
 */
final class NetworkFigure {

  private static final double COMPLETE_PCT = 95;
  private static final double DOT_PX = 7;
  private static final int WIDTH_PX = 760;
  private static final int ROW_PX = 20;
  private static final int REST_PX = 110;
  private static final int FILLED = 0;
  private static final int HOLLOW = 1;

  private final List<NetworkRow> rows;
  private final List<String> stations;

  private NetworkFigure(List<NetworkRow> rows) {
    this.rows = rows.stream().filter(row -> !row.catchMm().isEmpty()).toList();
    this.stations = this.rows.stream().map(NetworkRow::station).distinct().sorted().toList();
  }

  /** The figure as SVG. */
  static String svg(List<NetworkRow> rows) {
    NetworkFigure figure = new NetworkFigure(rows);
    int height = REST_PX + ROW_PX * Math.max(1, figure.stations.size());
    return SvgChart.text(figure.chart(), WIDTH_PX, height);
  }

  private JFreeChart chart() {
    NumberAxis catchAxis = ChartLook.numbers("Catch of the season (mm)");
    SymbolAxis stationAxis = new SymbolAxis("", stations.toArray(String[]::new));
    stationAxis.setRange(-0.5, Math.max(1, stations.size()) - 0.5);
    stationAxis.setInverted(true);
    stationAxis.setGridBandsVisible(false);
    stationAxis.setTickLabelInsets(new RectangleInsets(2, 4, 2, 10)); // another type may be wider
    XYPlot plot = new XYPlot(dots(), catchAxis, stationAxis, renderer());
    catchAxis.setAutoRangeIncludesZero(true);
    JFreeChart chart = ChartLook.chart(plot);
    chart.addSubtitle(0, words());
    return chart;
  }

  private static TextTitle words() {
    TextTitle words =
        new TextTitle(
            "Bars: two standard uncertainties. Filled: at least 95 % covered by readings, no"
                + " finding open; hollow: otherwise.",
            ChartLook.type());
    words.setPaint(ChartLook.INK);
    words.setHorizontalAlignment(HorizontalAlignment.LEFT);
    return words;
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
    renderer.setErrorPaint(ChartLook.DATA);
    renderer.setErrorStroke(new BasicStroke(1.2f));
    renderer.setDrawOutlines(true);
    renderer.setUseOutlinePaint(true);
    renderer.setUseFillPaint(true);
    for (int series : new int[] {FILLED, HOLLOW}) {
      renderer.setSeriesShape(
          series, new Ellipse2D.Double(-DOT_PX / 2, -DOT_PX / 2, DOT_PX, DOT_PX));
      renderer.setSeriesPaint(series, ChartLook.DATA);
      renderer.setSeriesFillPaint(series, series == FILLED ? ChartLook.DATA : Color.WHITE);
      renderer.setSeriesOutlinePaint(series, ChartLook.DATA);
      renderer.setSeriesOutlineStroke(series, new BasicStroke(1.4f));
      renderer.setSeriesShapesFilled(series, true);
    }
    return renderer;
  }
}
