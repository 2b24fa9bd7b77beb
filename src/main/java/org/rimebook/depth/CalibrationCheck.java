package org.rimebook.depth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.rimebook.station.Calibration;
import org.rimebook.station.Channel;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

/**
 * What the calibrations of a station sheet are worth before any reading is converted.
 *
 * <p>A calibration is refused unless depth rises with frequency all the way from {@value
 * #BELOW_F0_HZ} Hz below f0, where an empty bucket can read, to 1.1 times the capacity of the gauge
 * (1500 mm are taken where the sheet gives none). It is accepted with an alert where A/(2 f0 B)
 * differs from 1 by more than {@value #STRING_TOLERANCE}: an ideal taut string, f = (1/2L)√(T/μ),
 * has A/B = 2 f0. The tolerance is this project's own choice.
 *
 * @param alerts what is odd but was accepted, in words
 */
public record CalibrationCheck(List<String> alerts) {

  static final double BELOW_F0_HZ = 5;
  static final double STRING_TOLERANCE = 0.15;

  public CalibrationCheck {
    alerts = List.copyOf(alerts);
  }

  /**
   * Checks every calibration of every wire.
   *
   * @param sheet the station sheet
   * @param file name of its file, used in problems
   * @throws InputException naming every calibration that can't be used
   */
  public static CalibrationCheck of(StationSheet sheet, String file) throws InputException {
    List<Problem> problems = new ArrayList<>();
    List<String> alerts = new ArrayList<>();
    DepthRange range = DepthRange.of(sheet.gauge());
    for (Wire wire : sheet.wires()) {
      for (Calibration calibration : wire.calibrations()) {
        String subject = subject(wire, calibration);
        String fault = fault(calibration, range);
        if (!fault.isEmpty()) {
          problems.add(Problem.inFile(file, subject + fault, remedy(sheet)));
        } else {
          alerts.addAll(alerts(subject, CalibrationCurve.of(calibration)));
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    alerts.addAll(withoutThermometer(sheet));
    return new CalibrationCheck(alerts);
  }

  private static List<String> withoutThermometer(StationSheet sheet) {
    return sheet.channel(Channel.AIR_TEMPERATURE).isPresent()
        ? List.of()
        : sheet.wires().stream()
            .filter(wire -> wire.temperaturePerDegC().orElse(0) != 0)
            .map(
                wire ->
                    "wire \""
                        + wire.name()
                        + "\" states temperature_per_degc, which has no effect without a channel of"
                        + " air temperature")
            .toList();
  }

  private static String subject(Wire wire, Calibration calibration) {
    return "the calibration of wire \""
        + wire.name()
        + "\""
        + calibration.from().map(f -> " from " + f).orElse("")
        + " ";
  }

  private static String remedy(StationSheet sheet) {
    String check = "Compare A, B and f0 with the wire's sheet: A in cm/Hz, B in cm/Hz², f0 in Hz";
    return sheet.gauge().capacityMm().isPresent()
        ? check
        : check + "; or enter the gauge's capacity_mm";
  }

  private static String fault(Calibration calibration, DepthRange range) {
    CalibrationCurve curve = CalibrationCurve.of(calibration);
    double f0Hz = calibration.f0Hz();
    if (!(f0Hz > BELOW_F0_HZ)) {
      return "has f0 = " + f0Hz + " Hz, which no wire rings at";
    }
    if (!(calibration.aCmPerHz() > 0)) {
      return "has A = " + calibration.aCmPerHz() + " cm/Hz: depth must rise with frequency at f0";
    }
    if (!curve.reaches(range.highestMm())) {
      return text("turns back at %.1f Hz, before it comes to %.0f mm", curve, range);
    }
    if (!(curve.slopeMmPerHz(f0Hz - BELOW_F0_HZ) > 0)) {
      return text("turns back at %.1f Hz, within 5 Hz of f0 (%3$.1f Hz)", curve, range);
    }
    return "";
  }

  private static String text(String format, CalibrationCurve curve, DepthRange range) {
    return String.format(Locale.ROOT, format, curve.turningHz(), range.highestMm(), curve.f0Hz());
  }

  private static List<String> alerts(String subject, CalibrationCurve curve) {
    if (curve.bMmPerHz2() == 0) {
      return List.of(subject + "is a straight line (B = 0); a taut wire's isn't");
    }
    double ratio = curve.stringRatio();
    return Math.abs(ratio - 1) <= STRING_TOLERANCE
        ? List.of()
        : List.of(
            String.format(
                Locale.ROOT,
                "%shas A/(2 f0 B) = %.2f; an ideal wire has 1.00, and more than %.2f off is rare",
                subject,
                ratio,
                STRING_TOLERANCE));
  }
}
