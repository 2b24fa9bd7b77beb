package org.rimebook.station;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A measured quantity beside the wires.
 *
 * @param quantity CF standard name where one exists, for example {@code air_temperature}
 * @param column column of the record
 * @param unit unit the column is logged in
 * @param heightM height of the sensor above ground [m], where it matters
 */
public record Channel(String quantity, String column, Unit unit, OptionalDouble heightM) {

  /** CF standard name of air temperature. */
  public static final String AIR_TEMPERATURE = "air_temperature";

  /** CF standard name of wind speed. */
  public static final String WIND_SPEED = "wind_speed";

  /** CF standard name of the depth of snow on the ground. */
  public static final String SNOW_DEPTH = "surface_snow_thickness";

  /** CF standard name of relative humidity. */
  public static final String RELATIVE_HUMIDITY = "relative_humidity";

  /** Supply voltage; CF has no standard name for it. */
  public static final String SUPPLY_VOLTAGE = "supply_voltage";

  private static final Map<String, String> INSIDE_UNITS =
      Map.of(
          AIR_TEMPERATURE,
          "degC",
          WIND_SPEED,
          "m/s",
          SNOW_DEPTH,
          "m",
          RELATIVE_HUMIDITY,
          "%",
          SUPPLY_VOLTAGE,
          "V");

  /**
   * The symbol of the unit a quantity has inside; empty for a quantity nothing is computed from.
   */
  public static Optional<String> insideUnit(String quantity) {
    return Optional.ofNullable(INSIDE_UNITS.get(quantity));
  }
}
