package org.rimebook.station;

import java.util.List;
import java.util.Optional;

/**
 * One vibrating wire of the gauge.
 *
 * @param name name in tables and entries, for example the side it hangs on
 * @param frequencyColumn column of the record that holds its frequency or count
 * @param lead colour of its lead, where noted
 * @param calibrations at least one, ordered by {@link Calibration#from()}
 */
public record Wire(
    String name, String frequencyColumn, Optional<String> lead, List<Calibration> calibrations) {

  public Wire {
    calibrations = List.copyOf(calibrations);
  }

  /** The calibration in force at an instant: the last one whose start isn't later. */
  public Calibration calibrationAt(long epochMs) {
    Calibration inForce = calibrations.get(0);
    for (Calibration calibration : calibrations) {
      if (calibration.from().isEmpty() || calibration.from().get().toEpochMilli() <= epochMs) {
        inForce = calibration;
      }
    }
    return inForce;
  }
}
