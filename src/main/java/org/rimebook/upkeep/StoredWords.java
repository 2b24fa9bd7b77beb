package org.rimebook.upkeep;

import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.rimebook.station.Calibration;
import org.rimebook.station.Words;

/** What the notebook says of facts that were stored. */
public final class StoredWords {

  private static final double PPM = 1e6;

  private StoredWords() {}

  /**
   * A wire that was checked.
   *
   * @param wire its name
   * @param checks each mass
   */
  public static String checked(String wire, List<FieldCheck> checks) {
    return "Wire "
        + wire
        + " checked: "
        + checks.stream().map(FieldCheck::words).collect(Collectors.joining(" "));
  }

  /**
   * A calibration that was written into the station sheet.
   *
   * @param wire name of the wire
   * @param calibration the calibration, with the time from which it holds
   * @param offset the station's
   */
  public static String calibration(String wire, Calibration calibration, ZoneOffset offset) {
    return "Wire "
        + wire
        + " has a new calibration from "
        + calibration.from().orElseThrow().atOffset(offset)
        + " on: "
        + coefficients(calibration)
        + ".";
  }

  /**
   * A temperature coefficient that was stated in the station sheet, or is to be learnt again.
   *
   * @param wires names of the wires
   * @param perDegC share of the depth a degree [1/°C]; empty when it is to be learnt
   */
  public static String temperature(List<String> wires, OptionalDouble perDegC) {
    String what =
        perDegC.isEmpty()
            ? "to be learnt again"
            : perDegC.getAsDouble() == 0
                ? "switched off"
                : Words.text(
                    "stated as %+.1f millionths of the depth a °C", PPM * perDegC.getAsDouble());
    return "Temperature coefficient of " + String.join(", ", wires) + " " + what + ".";
  }

  /** The coefficients with their units. */
  public static String coefficients(Calibration calibration) {
    return "A "
        + calibration.aCmPerHz()
        + " cm/Hz, B "
        + calibration.bCmPerHz2()
        + " cm/Hz², f0 "
        + calibration.f0Hz()
        + " Hz";
  }
}
