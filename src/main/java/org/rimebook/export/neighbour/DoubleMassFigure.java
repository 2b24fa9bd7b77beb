package org.rimebook.export.neighbour;

import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;
import org.rimebook.export.figure.FigureLook;
import org.rimebook.export.figure.Glyphs;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.totals.neighbour.Comparison;
import org.rimebook.totals.neighbour.Pair;
import org.rimebook.totals.neighbour.SlopeBreak;

/** The double-mass curve; a dashed line where its slope breaks. */
public final class DoubleMassFigure {

  private static final double CURVE_PT = 1.2;

  private DoubleMassFigure() {}

  /**
   * The figure.
   *
   * @param station name of the station
   * @param comparison the comparison
   * @param sidePt width and height [pt]
   */
  public static SeasonFigure of(String station, Comparison comparison, double sidePt) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    renderer.setSeriesPaint(0, FigureLook.wire(0));
    renderer.setSeriesStroke(0, FigureLook.line(0, CURVE_PT));
    renderer.setDrawSeriesLineAsPath(true);
    DefaultXYDataset curve = new DefaultXYDataset();
    curve.addSeries("curve", points(comparison));
    XYPlot plot =
        new XYPlot(
            curve,
            axis("Neighbours, accumulated (mm)"),
            axis(Glyphs.visible(station) + ", accumulated (mm)"),
            renderer);
    FigureLook.dress(plot);
    comparison
        .slopeBreak()
        .filter(SlopeBreak::significant)
        .ifPresent(found -> plot.addDomainMarker(marker(comparison, found)));
    return SeasonFigure.of(plot, sidePt, sidePt);
  }

  private static NumberAxis axis(String label) {
    NumberAxis axis = new NumberAxis(label);
    axis.setNumberFormatOverride(FigureLook.numbers());
    FigureLook.dress(axis);
    return axis;
  }

  private static ValueMarker marker(Comparison comparison, SlopeBreak found) {
    double at =
        comparison.pairs().stream()
            .filter(pair -> pair.span().toMs() <= found.atMs())
            .mapToDouble(Pair::otherMm)
            .sum();
    return new ValueMarker(at, FigureLook.INK, FigureLook.line(1, 0.8));
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
