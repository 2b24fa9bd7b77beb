package org.rimebook.upkeep;

import static org.rimebook.station.Words.text;

import org.rimebook.depth.CalibrationCurve;

/**
 * A wire checked in the field with one or two known masses: what it shows the bucket to gain
 * against what was put on.
 *
 * @param massKg mass put on [kg]
 * @param expectedMm depth of water it stands for [mm]
 * @param shownMm rise the wire shows on its sheet [mm]
 * @param letMm by how much it may be off [mm]
 */
public record FieldCheck(double massKg, double expectedMm, double shownMm, double letMm) {

  /**
   * Accuracy of three wires together (Duchon, Wade and Cole 2003), and what readings by hand are
   * good for; the second is own choice [mm].
   */
  private static final double LET = 0.01;

  private static final double LET_MM = 0.3;

  /**
   * Checks a wire.
   *
   * @param sheet the curve of its sheet
   * @param before reading before the mass is put on, with what lies on the wires then
   * @param with reading with it
   * @param orificeAreaCm2 area of the orifice [cm²]
   */
  public static FieldCheck of(
      CalibrationCurve sheet, LoadReading before, LoadReading with, double orificeAreaCm2) {
    double kg = with.massKg() - before.massKg();
    double expectedMm = Water.depthMm(kg, orificeAreaCm2);
    double shownMm = sheet.depthMm(with.frequencyHz()) - sheet.depthMm(before.frequencyHz());
    return new FieldCheck(kg, expectedMm, shownMm, LET_MM + LET * Math.abs(expectedMm));
  }

  /** Whether the wire shows what was put on. */
  public boolean holds() {
    return Math.abs(shownMm - expectedMm) <= letMm;
  }

  /** The outcome in words. */
  public String words() {
    return text(
        "%.3f kg stand for %.2f mm; the wire shows %.2f mm (%+.2f mm, %.2f mm let pass): %s.",
        massKg,
        expectedMm,
        shownMm,
        shownMm - expectedMm,
        letMm,
        holds() ? "it holds" : "look for a touch, then fit a new sheet");
  }
}
