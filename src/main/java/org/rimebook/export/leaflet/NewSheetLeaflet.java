package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import org.rimebook.depth.CalibrationCurve;
import org.rimebook.depth.DepthRange;
import org.rimebook.export.report.Table;
import org.rimebook.station.Gauge;
import org.rimebook.station.StationSheet;

/** A calibration sheet that came with a wire, beside the one the station sheet has. */
public final class NewSheetLeaflet {

  private static final double MM_PER_CM = 10;
  private static final int STEPS = 6;

  private NewSheetLeaflet() {}

  /**
   * The leaflet.
   *
   * @param wire name of the wire
   * @param given the curve of the new sheet
   * @param before the curve of the station sheet
   * @param sheet the station sheet
   */
  public static Leaflet of(
      String wire, CalibrationCurve given, CalibrationCurve before, StationSheet sheet) {
    return new Leaflet.Builder()
        .heading("Coefficients")
        .table(coefficients(given, before))
        .words(
            text(
                "A/(2 f0 B) = %.3f by the new sheet, %.3f by the present one; an ideal taut wire"
                    + " has 1.",
                given.stringRatio(), before.stringRatio()))
        .heading("What the bucket would read")
        .table(depths(given, before, fullMm(sheet.gauge())))
        .words(
            "Frequencies at which the present sheet has these depths, and the depths the new sheet"
                + " has there. Where another wire was hung, the two needn't agree.")
        .done("New sheet of wire " + wire, sheet.name());
  }

  private static double fullMm(Gauge gauge) {
    return gauge.capacityMm().orElse(DepthRange.of(gauge).highestMm());
  }

  private static Table coefficients(CalibrationCurve given, CalibrationCurve before) {
    return new Table.Builder()
        .words("")
        .figures("New sheet")
        .figures("Present sheet")
        .row(
            "A cm/Hz",
            text("%.6e", given.aMmPerHz() / MM_PER_CM),
            text("%.6e", before.aMmPerHz() / MM_PER_CM))
        .row(
            "B cm/Hz²",
            text("%.6e", given.bMmPerHz2() / MM_PER_CM),
            text("%.6e", before.bMmPerHz2() / MM_PER_CM))
        .row("f0 Hz", text("%.3f", given.f0Hz()), text("%.3f", before.f0Hz()))
        .done();
  }

  private static Table depths(CalibrationCurve given, CalibrationCurve before, double fullMm) {
    Table.Builder table =
        new Table.Builder()
            .figures("Frequency Hz")
            .figures("New sheet mm")
            .figures("Present sheet mm")
            .figures("Difference mm");
    for (int step = 0; step <= STEPS; step++) {
      double mm = fullMm * step / STEPS;
      if (before.reaches(mm)) {
        double hz = before.frequencyHz(mm);
        table.row(
            Say.number(hz, 2),
            Say.number(given.depthMm(hz), 2),
            Say.number(mm, 2),
            text("%+.2f", given.depthMm(hz) - mm));
      }
    }
    return table.done();
  }
}
