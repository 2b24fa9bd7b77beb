package org.rimebook.export.figure;

import java.awt.geom.Ellipse2D;
import org.jfree.chart.axis.NumberAxis;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.upkeep.WeightFit;

/**
 * What check weights miss a fitted curve by, with the curve's standard uncertainty and how far the
 * wire's sheet lies from it, over depth.
 */
public final class WeightsFigure {

  private static final int POINTS = 100;
  private static final double THIN_PT = 0.7;
  private static final double HEAVY_PT = 1.4;
  private static final double DOT_PT = 2.2;

  private final WeightFit fit;
  private final double fullMm;
  private final Lines lines = new Lines();

  private WeightsFigure(WeightFit fit) {
    this.fit = fit;
    this.fullMm = fit.residuals().stream().mapToDouble(WeightFit.Residual::depthMm).max().orElse(1);
  }

  /**
   * The figure.
   *
   * @param fit the weights and their curve
   * @param sheet the curve of the wire's sheet
   * @param widthPt width [pt]
   * @param heightPt height [pt]
   */
  public static SeasonFigure of(
      WeightFit fit, CalibrationCurve sheet, double widthPt, double heightPt) {
    return new WeightsFigure(fit).figure(sheet, widthPt, heightPt);
  }

  private SeasonFigure figure(CalibrationCurve sheet, double widthPt, double heightPt) {
    curve("sheet", HEAVY_PT, 1, (hz, mm) -> sheet.depthMm(hz) - mm);
    curve("u of the fit", THIN_PT, 2, (hz, mm) -> fit.uncertainty().depthMm(hz, 0));
    curve("", THIN_PT, 2, (hz, mm) -> -fit.uncertainty().depthMm(hz, 0));
    weights();
    NumberAxis off =
        FigureLook.valueAxis("Off the fit (mm)", lines.low(), lines.high(), heightPt - 30);
    double margin = 0.03 * fullMm;
    NumberAxis depth =
        FigureLook.valueAxis("Depth (mm)", -margin, fullMm + margin, (widthPt - 50) / 2.5);
    depth.setRange(-margin, fullMm + margin);
    KeyedPlot plot = new KeyedPlot(lines.points(), off, lines.renderer(), lines.key());
    plot.setDomainAxis(depth);
    plot.setRangeZeroBaselineVisible(true);
    return SeasonFigure.of(plot, widthPt, heightPt);
  }

  /** Something over the fitted curve [mm]. */
  private interface Over {

    double mm(double frequencyHz, double depthMm);
  }

  private void curve(String name, double widthPt, int look, Over over) {
    double[][] drawn = new double[2][POINTS + 1];
    for (int i = 0; i <= POINTS; i++) {
      drawn[0][i] = fullMm * i / POINTS;
      drawn[1][i] = over.mm(fit.fit().curve().frequencyHz(drawn[0][i]), drawn[0][i]);
      lines.include(drawn[1][i], drawn[1][i]);
    }
    lines.add(name, drawn, FigureLook.wire(look), FigureLook.line(look, widthPt));
  }

  private void weights() {
    int count = fit.residuals().size();
    double[][] drawn = new double[2][count];
    for (int i = 0; i < count; i++) {
      drawn[0][i] = fit.residuals().get(i).depthMm();
      drawn[1][i] = fit.residuals().get(i).residualMm();
      lines.include(drawn[1][i], drawn[1][i]);
    }
    lines.dots("weights", drawn, new Ellipse2D.Double(-DOT_PT, -DOT_PT, 2 * DOT_PT, 2 * DOT_PT));
  }
}
