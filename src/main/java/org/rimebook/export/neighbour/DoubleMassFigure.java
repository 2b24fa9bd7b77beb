package org.rimebook.export.neighbour;

import java.awt.BasicStroke;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;
import org.rimebook.export.chart.ChartLook;
import org.rimebook.export.chart.SvgChart;
import org.rimebook.totals.neighbour.Comparison;
import org.rimebook.totals.neighbour.Pair;
import org.rimebook.totals.neighbour.SlopeBreak;

/** The double-mass curve as SVG; a dashed line where its slope breaks. */
public final class DoubleMassFigure {

  private static final int SIDE_PX = 520;

  private DoubleMassFigure() {}

  /**
   * The figure.
   *
   * @param station name of the station
   * @param comparison the comparison
   */
  public static String svg(String station, Comparison comparison) {
    return SvgChart.text(chart(station, comparison), SIDE_PX, SIDE_PX);
  }

  private static JFreeChart chart(String station, Comparison comparison) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setSeriesPaint(0, ChartLook.DATA);
    renderer.setSeriesStroke(0, new BasicStroke(1.5f));
    renderer.setDrawSeriesLineAsPath(true);
    DefaultXYDataset curve = new DefaultXYDataset();
    curve.addSeries("curve", points(comparison));
    XYPlot plot =
        new XYPlot(
            curve,
            ChartLook.numbers("Neighbours, accumulated (mm)"),
            ChartLook.numbers(station + ", accumulated (mm)"),
            renderer);
    comparison
        .slopeBreak()
        .filter(SlopeBreak::significant)
        .ifPresent(found -> plot.addDomainMarker(marker(comparison, found)));
    return ChartLook.chart(plot);
  }

  private static ValueMarker marker(Comparison comparison, SlopeBreak found) {
    double at =
        comparison.pairs().stream()
            .filter(pair -> pair.span().toMs() <= found.atMs())
            .mapToDouble(Pair::otherMm)
            .sum();
    return new ValueMarker(
        at,
        ChartLook.INK,
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
}
