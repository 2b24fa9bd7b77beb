package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class StationSheetWriterTest {

  private static StationSheet read(String text) throws InputException {
    return StationSheetReader.read(text, "station.json").sheet();
  }

  @Test
  void aSheetHasTheMembersOfTheContractInItsOrder() throws InputException {
    assertThat(StationSheetWriter.write(read(Sheets.EXAMPLE), Optional.empty()))
        .isEqualTo(
            """
            {
              "format": "rimebook-station/1",
              "name": "Example Ridge",
              "latitude_deg": 53.2,
              "longitude_deg": -117.1,
              "elevation_m": 1490,
              "utc_offset": "-07:00",
              "day_starts_at": "00:00",
              "gauge": {"orifice_area_cm2": 200, "capacity_mm": 600, "rim_height_m": 2, "wind_shield": "single-alter"},
              "wires": [
                {
                  "name": "north",
                  "frequency_column": "f1_hz",
                  "lead": "red",
                  "calibrations": [
                    {"from": null, "a_cm_per_hz": 0.0172, "b_cm_per_hz2": 8.2E-6, "f0_hz": 1050.1}
                  ]
                }
              ],
              "record": {"files": ["records/*.csv"], "time_column": "time", "missing": ["NAN", "-9999"]},
              "channels": [
                {"quantity": "air_temperature", "column": "air_temp_c", "unit": "degC"},
                {"quantity": "wind_speed", "column": "wind_ms", "unit": "m/s", "height_m": 10},
                {"quantity": "supply_voltage", "column": "battery_v", "unit": "V"}
              ]
            }
            """);
  }

  @Test
  void aDateIsWrittenInStationTime() throws InputException {
    StationSheet sheet = read(Sheets.exampleWith("null", "\"2025-01-15T17:30:00Z\""));
    assertThat(StationSheetWriter.write(sheet, Optional.empty()))
        .contains("\"from\": \"2025-01-15T10:30:00-07:00\"");
  }

  private static final String EARLIER =
      """
      {"wires": [
         {"name": "south", "length_mm": 40},
         {"name": "north", "length_mm": 50, "lead": "blue",
          "calibrations": [{"sheet": "C-17", "f0_hz": 1}, {"sheet": "C-18"}]},
         7],
       "gauge": {"serial": 123456789012345678901234567890, "capacity_mm": 1},
       "channels": [{"column": "wind_ms", "sensor": {"cups": 3}}, {"column": "gone", "sensor": 1}],
       "record": {"logger": [1.50, true, null], "delimiter": ";"},
       "owner": "the valley", "name": "Old name"}
      """;

  @Test
  void membersOfTheEarlierTextThatNobodyKnowsAreKeptWhereTheyStood() throws InputException {
    StationSheet sheet = read(Sheets.EXAMPLE);
    String text = StationSheetWriter.write(sheet, Optional.of("\uFEFF" + EARLIER));
    assertThat(text)
        .contains("\"owner\": \"the valley\"")
        .contains("\"serial\": 123456789012345678901234567890")
        .contains("\"logger\": [1.50, true, null]")
        .contains("\"length_mm\": 50")
        .contains("\"f0_hz\": 1050.1, \"sheet\": \"C-17\"")
        .contains("\"height_m\": 10, \"sensor\": {\"cups\": 3}}")
        .doesNotContain("south", "40", "C-18", "gone", "Old name", "blue", "delimiter");
    StationSheetReader.Reading reading = StationSheetReader.read(text, "station.json");
    assertThat(reading.sheet()).isEqualTo(sheet);
    assertThat(reading.unknownMembers())
        .containsExactlyInAnyOrder(
            "owner",
            "gauge.serial",
            "wires.length_mm",
            "wires.calibrations.sheet",
            "record.logger",
            "channels.sensor");
  }

  @Test
  void writingOverItsOwnTextChangesNothing() throws InputException {
    StationSheet sheet = read(Sheets.EXAMPLE);
    String once = StationSheetWriter.write(sheet, Optional.of(EARLIER));
    assertThat(StationSheetWriter.write(sheet, Optional.of(once))).isEqualTo(once);
  }

  @Test
  void anEarlierTextThatIsNoSheetIsNotWrittenOver() throws InputException {
    StationSheet sheet = read(Sheets.EXAMPLE);
    for (String text : new String[] {"", "{", "[1]", "{\"a\": 1, \"a\": 2}"}) {
      assertThatThrownBy(() -> StationSheetWriter.write(sheet, Optional.of(text)))
          .as(text)
          .isInstanceOf(InputException.class)
          .hasMessageStartingWith("station.json, line 1");
    }
  }
}
