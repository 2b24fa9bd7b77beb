package org.rimebook.export.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Calibration;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/** Depth against frequency of each wire: the curves of its sheet, heavy where the season lies. */
public final class CalibrationFigure {

  private static final int POINTS = 120;
  private static final double THIN_PT = 0.7;
  private static final double HEAVY_PT = 2;
  private static final double CAPACITY_MM = 600;

  private final SeasonResult result;
  private final Lines lines = new Lines();
  private int later;
  private double lowHz = Double.POSITIVE_INFINITY;
  private double highHz = Double.NEGATIVE_INFINITY;

  private CalibrationFigure(SeasonResult result) {
    this.result = result;
  }

  /**
   * The curves of a season's sheet.
   *
   * @param result the season
   * @param widthPt width [pt]
   * @param heightPt height [pt]
   */
  public static SeasonFigure of(SeasonResult result, double widthPt, double heightPt) {
    return new CalibrationFigure(result).figure(widthPt, heightPt);
  }

  private SeasonFigure figure(double widthPt, double heightPt) {
    StationSheet sheet = result.season().sheet();
    double fullMm = sheet.gauge().capacityMm().orElse(CAPACITY_MM);
    for (int wire = 0; wire < sheet.wires().size(); wire++) {
      add(sheet.wires().get(wire), wire, fullMm);
    }
    NumberAxis depth = FigureLook.valueAxis("Depth (mm)", lines.low(), lines.high(), heightPt - 30);
    double margin = 0.03 * (highHz - lowHz);
    NumberAxis frequency =
        FigureLook.valueAxis(
            "Frequency (Hz)", lowHz - margin, highHz + margin, (widthPt - 50) / 2.5);
    frequency.setRange(lowHz - margin, highHz + margin);
    KeyedPlot plot = new KeyedPlot(lines.points(), depth, lines.renderer(), lines.key());
    plot.setDomainAxis(frequency);
    return SeasonFigure.of(plot, widthPt, heightPt);
  }

  private void add(Wire wire, int index, double fullMm) {
    List<Calibration> all = wire.calibrations();
    for (int i = 0; i < all.size(); i++) {
      CalibrationCurve curve = CalibrationCurve.of(all.get(i));
      String name = all.size() == 1 ? wire.name() : wire.name() + " (" + (i + 1) + ")";
      int line = i == 0 ? index : result.season().sheet().wires().size() + later++;
      Color colour = FigureLook.wire(index);
      line(name, curve, new double[] {0, fullMm}, new Look(colour, FigureLook.line(line, THIN_PT)));
      double[] met = met(index, i);
      if (met[1] > met[0]) {
        line("", curve, met, new Look(colour, FigureLook.line(0, HEAVY_PT)));
      }
    }
  }

  private record Look(Color colour, BasicStroke stroke) {}

  private void line(String name, CalibrationCurve curve, double[] rangeMm, Look look) {
    double fromHz = curve.frequencyHz(rangeMm[0]);
    double toHz = curve.frequencyHz(rangeMm[1]);
    double[][] points = new double[2][POINTS + 1];
    for (int i = 0; i <= POINTS; i++) {
      points[0][i] = fromHz + (toHz - fromHz) * i / POINTS;
      points[1][i] = curve.depthMm(points[0][i]);
    }
    lines.add(name, points, look.colour(), look.stroke());
    lines.include(rangeMm[0], rangeMm[1]);
    lowHz = Math.min(lowHz, fromHz);
    highHz = Math.max(highHz, toHz);
  }

  /** The depths the season met under a calibration [mm]. */
  private double[] met(int wire, int calibration) {
    double[] range = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    List<Calibration> all = result.season().sheet().wires().get(wire).calibrations();
    SeasonRecord record = result.season().record();
    int from = calibration == 0 ? 0 : firstRow(record, all.get(calibration));
    int end =
        calibration + 1 == all.size() ? record.size() : firstRow(record, all.get(calibration + 1));
    for (int row = from; row < end; row++) {
      if (result.depths().used(wire, row)) {
        range[0] = Math.min(range[0], result.depths().depthMm(wire, row));
        range[1] = Math.max(range[1], result.depths().depthMm(wire, row));
      }
    }
    return range;
  }

  private static int firstRow(SeasonRecord record, Calibration calibration) {
    return calibration.from().map(from -> record.firstRowAtOrAfter(from.toEpochMilli())).orElse(0);
  }
}
