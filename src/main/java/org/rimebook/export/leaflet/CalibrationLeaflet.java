package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.util.List;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.depth.CalibrationFit;
import org.rimebook.export.report.Table;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.FieldCheck;
import org.rimebook.upkeep.SheetTest;
import org.rimebook.upkeep.Weighing;
import org.rimebook.upkeep.WeightFit;

/** A wire against check weights. */
public final class CalibrationLeaflet {

  private static final String TITLE = "Check weights on wire ";
  private static final String CAUTIONS = "Cautions";

  private CalibrationLeaflet() {}

  /** Check weights, whether they are enough for a fit or not. */
  public static Leaflet of(String wire, Weighing weighing, CalibrationCurve sheet, String station) {
    return weighing
        .fit()
        .map(fit -> of(wire, fit, sheet, station))
        .orElseGet(() -> of(wire, weighing.checks(sheet), station));
  }

  /** One or two masses in the field. */
  static Leaflet of(String wire, List<FieldCheck> checks, String station) {
    Leaflet.Builder leaflet = new Leaflet.Builder();
    checks.forEach(check -> leaflet.words(check.words()));
    return leaflet
        .words(
            "1 % (accuracy of three wires together, Duchon, Wade and Cole 2003) and 0.3 mm (own"
                + " choice) are let pass. Three weights or more, spread over the range, give a new"
                + " sheet.")
        .heading(CAUTIONS)
        .cautions(Caution.weights())
        .done(TITLE + wire, station);
  }

  /** A fit, and what it says of the sheet. */
  static Leaflet of(String wire, WeightFit fit, CalibrationCurve sheet, String station) {
    CalibrationFit numbers = fit.fit();
    SheetTest test = SheetTest.of(sheet, fit);
    return new Leaflet.Builder()
        .words(test.words())
        .heading("Fit")
        .table(coefficients(fit, sheet))
        .words(
            text(
                "Covariance of A and B %.3e cm²/Hz³; weights miss the curve by %.3f mm (standard"
                    + " deviation, %d degrees of freedom). A/(2 f0 B) = %.3f; an ideal taut wire"
                    + " has 1. Least squares by QR, f0 as read (JCGM 100:2008, 5.1 and H.3).",
                numbers.covarianceAb() / 100,
                numbers.residualSdMm(),
                test.freedom(),
                numbers.curve().stringRatio()))
        .words(
            text(
                "f0 as read less f0 of the sheet: %+.2f Hz. A zero that has moved asks for a new f0,"
                    + " not for a new sheet.",
                test.zeroMovedHz()))
        .heading("Residuals")
        .table(residuals(fit, sheet))
        .weights(fit, sheet)
        .heading("For the station sheet")
        .words(
            "{\"from\": \"…\", \"a_cm_per_hz\": "
                + fit.aCmPerHz()
                + ", \"b_cm_per_hz2\": "
                + fit.bCmPerHz2()
                + ", \"f0_hz\": "
                + numbers.curve().f0Hz()
                + "}")
        .heading(CAUTIONS)
        .cautions(Caution.weights())
        .done(TITLE + wire, station);
  }

  private static Table coefficients(WeightFit fit, CalibrationCurve sheet) {
    CalibrationFit numbers = fit.fit();
    return new Table.Builder()
        .words("")
        .figures("Fitted")
        .figures("Standard uncertainty")
        .figures("Sheet")
        .row(
            "A cm/Hz",
            text("%.6e", fit.aCmPerHz()),
            text("%.1e", numbers.uAMmPerHz() / 10),
            text("%.6e", sheet.aMmPerHz() / 10))
        .row(
            "B cm/Hz²",
            text("%.6e", fit.bCmPerHz2()),
            text("%.1e", numbers.uBMmPerHz2() / 10),
            text("%.6e", sheet.bMmPerHz2() / 10))
        .row(
            "f0 Hz",
            text("%.3f", numbers.curve().f0Hz()),
            fit.uF0Hz() == 0 ? Say.NONE : text("%.3f", fit.uF0Hz()),
            text("%.3f", sheet.f0Hz()))
        .done();
  }

  private static Table residuals(WeightFit fit, CalibrationCurve sheet) {
    Table.Builder table =
        new Table.Builder()
            .figures("Weight mm")
            .figures("Frequency Hz")
            .figures("Off the fit mm")
            .figures("Off the sheet mm")
            .figures("Uncertainty of the fit mm");
    for (WeightFit.Residual each : fit.residuals()) {
      table.row(
          Say.number(each.depthMm(), 2),
          Say.number(each.frequencyHz(), 2),
          text("%+.3f", each.residualMm()),
          text("%+.3f", each.depthMm() - sheet.depthMm(each.frequencyHz())),
          text("%.3f", fit.uncertainty().depthMm(each.frequencyHz(), 0)));
    }
    return table.done();
  }
}
