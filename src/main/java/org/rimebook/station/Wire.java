package org.rimebook.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One vibrating wire of the gauge.
 *
 * @param name name in tables and entries, for example the side it hangs on
 * @param frequencyColumn column of the record that holds its frequency or count
 * @param lead colour of its lead, where noted
 * @param calibrations at least one, ordered by {@link Calibration#from()}
 * @param temperaturePerDegC share of the depth by which its reading moves a degree of air
 *     temperature, as stated by hand [1/°C]; 0 takes nothing off; empty = to be learnt
 */
public record Wire(
    String name,
    String frequencyColumn,
    Optional<String> lead,
    List<Calibration> calibrations,
    OptionalDouble temperaturePerDegC) {

  /**
   * The most a wire's reading moves a degree [1/°C]; own choice, usual ones being 25 times less.
   */
  public static final double MOST_PER_DEG_C = 1e-3;

  public Wire {
    calibrations = List.copyOf(calibrations);
  }

  /** A wire whose temperature coefficient is to be learnt. */
  public Wire(
      String name, String frequencyColumn, Optional<String> lead, List<Calibration> calibrations) {
    this(name, frequencyColumn, lead, calibrations, OptionalDouble.empty());
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
