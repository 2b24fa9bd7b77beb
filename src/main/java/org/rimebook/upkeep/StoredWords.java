package org.rimebook.upkeep;

import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import org.rimebook.station.Calibration;

/** What the notebook says of facts that were stored. */
public final class StoredWords {

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
