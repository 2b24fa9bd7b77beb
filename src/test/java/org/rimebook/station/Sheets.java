package org.rimebook.station;

/** Station sheets for tests. */
final class Sheets {

  /** The example of the contract. */
  static final String EXAMPLE =
      """
      {
        "format": "rimebook-station/1",
        "name": "Example Ridge", "latitude_deg": 53.2, "longitude_deg": -117.1, "elevation_m": 1490,
        "utc_offset": "-07:00",
        "day_starts_at": "00:00",
        "gauge": {"orifice_area_cm2": 200, "capacity_mm": 600, "rim_height_m": 2.0, "wind_shield": "single-alter"},
        "wires": [
          {"name": "north", "frequency_column": "f1_hz", "lead": "red",
           "calibrations": [{"from": null, "a_cm_per_hz": 0.0172, "b_cm_per_hz2": 8.2e-6, "f0_hz": 1050.1}]}
        ],
        "record": {"files": ["records/*.csv"], "time_column": "time", "missing": ["NAN", "-9999"]},
        "channels": [
          {"quantity": "air_temperature", "column": "air_temp_c", "unit": "degC"},
          {"quantity": "wind_speed", "column": "wind_ms", "unit": "m/s", "height_m": 10},
          {"quantity": "supply_voltage", "column": "battery_v", "unit": "V"}
        ]
      }
      """;

  /** The least a sheet can hold. */
  static final String LEAST =
      """
      {
        "format": "rimebook-station/1", "name": "Example Ridge", "utc_offset": "+00:00",
        "gauge": {"orifice_area_cm2": 200},
        "wires": [{"name": "north", "frequency_column": "f1_hz",
                   "calibrations": [{"a_cm_per_hz": 0.0172, "b_cm_per_hz2": 8.2e-6, "f0_hz": 1050.1}]}],
        "record": {"time_column": "time"}
      }
      """;

  private Sheets() {}

  /** The example with one piece of its text replaced. */
  static String exampleWith(String piece, String replacement) {
    if (!EXAMPLE.contains(piece)) {
      throw new IllegalArgumentException("the example doesn't hold " + piece);
    }
    return EXAMPLE.replace(piece, replacement);
  }
}
