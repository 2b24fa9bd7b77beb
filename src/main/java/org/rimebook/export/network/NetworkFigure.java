package org.rimebook.export.network;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.rimebook.export.figure.FigureLook;
import org.rimebook.export.figure.Glyphs;
import org.rimebook.export.figure.SeasonFigure;

/**
 * The catch of every season of a network, a line for each station: dots with two standard
 * uncertainties to either side, filled where the season is complete and decided on.
 */
final class NetworkFigure {

  private static final double COMPLETE_PCT = 95;
  private static final double DOT_PT = 5;
  private static final double WIDTH_PT = 500;
  private static final double ROW_PT = 14;
  private static final double REST_PT = 60;
  private static final Color DATA = FigureLook.wire(0);
  private static final int FILLED = 0;
  private static final int HOLLOW = 1;

  private final List<NetworkRow> rows;
  private final List<String> stations;

  private NetworkFigure(List<NetworkRow> rows) {
    this.rows = rows.stream().filter(row -> !row.catchMm().isEmpty()).toList();
    this.stations = this.rows.stream().map(NetworkRow::station).distinct().sorted().toList();
  }

  /** The figure. */
  static SeasonFigure of(List<NetworkRow> rows) {
    NetworkFigure figure = new NetworkFigure(rows);
    double heightPt = REST_PT + ROW_PT * Math.max(1, figure.stations.size());
    return SeasonFigure.of(figure.plot(), WIDTH_PT, heightPt);
  }

  private XYPlot plot() {
    NumberAxis catchAxis =
        new NumberAxis(
            "Catch of the season (mm). Bars: two standard uncertainties. Filled: at least 95 %"
                + " covered by readings, no finding open");
    catchAxis.setNumberFormatOverride(FigureLook.numbers());
    String[] names = stations.stream().map(Glyphs::visible).toArray(String[]::new);
    SymbolAxis stationAxis = new SymbolAxis("", names);
    stationAxis.setRange(-0.5, Math.max(1, stations.size()) - 0.5);
    stationAxis.setInverted(true);
    stationAxis.setGridBandsVisible(false);
    FigureLook.dress(catchAxis);
    FigureLook.dress(stationAxis);
    stationAxis.setTickLabelInsets(new RectangleInsets(2, 4, 2, 10)); // another type may be wider
    XYPlot plot = new XYPlot(dots(), catchAxis, stationAxis, renderer());
    FigureLook.dress(plot);
    catchAxis.setAutoRangeIncludesZero(true);
    return plot;
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
    renderer.setErrorPaint(DATA);
    renderer.setErrorStroke(new BasicStroke(1.2f));
    renderer.setDrawOutlines(true);
    renderer.setUseOutlinePaint(true);
    renderer.setUseFillPaint(true);
    for (int series : new int[] {FILLED, HOLLOW}) {
      renderer.setSeriesShape(
          series, new Ellipse2D.Double(-DOT_PT / 2, -DOT_PT / 2, DOT_PT, DOT_PT));
      renderer.setSeriesPaint(series, DATA);
      renderer.setSeriesFillPaint(series, series == FILLED ? DATA : Color.WHITE);
      renderer.setSeriesOutlinePaint(series, DATA);
      renderer.setSeriesOutlineStroke(series, new BasicStroke(1.4f));
      renderer.setSeriesShapesFilled(series, true);
    }
    return renderer;
  }
}
