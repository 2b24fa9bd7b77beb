package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StationSheetErrorsTest {

  private static List<Problem> problems(String text) {
    return catchThrowableOfType(
            InputException.class, () -> StationSheetReader.read(text, "station.json"))
        .problems();
  }

  /** Each row: piece of the example, what stands in for it, line, column, start of the message. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "rimebook-station/1 | rimebook-station/2 | 2 | 13 | format is \"rimebook-station/2\"",
        "\"Example Ridge\" | 7 | 3 | 11 | name must be a text, not 7.0",
        "Example Ridge | ` ` | 3 | 11 | name is empty",
        "53.2 | 93.2 | 3 | 44 | latitude_deg is 93.2",
        "-117.1 | \"-117.1\" | 3 | 67 | longitude_deg must be a number",
        "1490 | 1e999 | 3 | 90 | elevation_m must be a number",
        "\"utc_offset\" | \"zone\" | 1 | 1 | utc_offset is absent or null",
        "-07:00 | Mountain | 4 | 17 | utc_offset is \"Mountain\"",
        "\"-07:00\" | \"\" | 4 | 17 | utc_offset is empty",
        "00:00\", | 00:30\", | 5 | 20 | day_starts_at is \"00:30\"",
        "00:00\", | noon\", | 5 | 20 | day_starts_at is \"noon\"",
        "\"orifice_area_cm2\": 200 | \"area\": 200 | 6 | 12 | gauge.orifice_area_cm2 is absent or null",
        "\"orifice_area_cm2\": 200 | \"orifice_area_cm2\": 0 | 6 | 33 | gauge.orifice_area_cm2 is 0",
        "600 | -600 | 6 | 53 | gauge.capacity_mm is -600",
        "2.0 | 0 | 6 | 74 | gauge.rim_height_m is 0",
        "single-alter | fence | 6 | 94 | gauge.wind_shield is \"fence\"",
        "\"north\" | \"no+rth\" | 8 | 14 | wires.name is \"no+rth\"",
        "\"f1_hz\" | [1] | 8 | 43 | wires.frequency_column must be a text, not a list",
        "0.0172 | true | 9 | 53 | wires.calibrations.a_cm_per_hz must be a number, not true",
        "\"f0_hz\": 1050.1 | \"f\": 1 | 9 | 23 | wires.calibrations.f0_hz is absent or null",
        "null | \"2025-01-15T10:30:00\" | 9 | 32 | wires.calibrations.from has no offset",
        "null | \"+12025-01-15T10:30:00Z\" | 9 | 32 | wires.calibrations.from lies in the year",
        "\"NAN\" | 7 | 11 | 77 | record.missing must hold texts, not 7.0",
        "[\"records/*.csv\"] | \"*.csv\" | 11 | 23 | record.files must be a list",
        "\"time_column\": | \"time_is\": | 11 | 13 | record.time_column is absent or null",
        "\"time_column\": | \"time_is\": | 11 | 53 | record.time_is is \"time\"",
        "\"missing\": [ | \"gate_s\": 0, \"missing\": [ | 11 | 75 | record.gate_s is 0",
        "\"missing\": [ | \"frequency_kind\": \"counts\", \"m\": [ | 11 | 13 | record.gate_s is absent or null",
        "\"missing\": [ | \"frequency_kind\": \"rpm\", \"m\": [ | 11 | 83 | record.frequency_kind is",
        "\"missing\": [ | \"delimiter\": \"; \", \"m\": [ | 11 | 78 | record.delimiter is \"; \"",
        "\"missing\": [ | \"decimal\": \"-\", \"m\": [ | 11 | 76 | record.decimal is \"-\"",
        "\"degC\" | \"celsius\" | 13 | 69 | channels.unit is \"celsius\"",
        "\"m/s\" | \"degC\" | 14 | 61 | channels.unit is \"degC\"",
        "\"height_m\": 10 | \"height_m\": 0 | 14 | 80 | channels.height_m is 0",
        "\"supply_voltage\" | null | 15 | 18 | channels.quantity is absent or null",
      })
  void aWrongMemberIsNamedByLineAndColumn(
      String piece, String replacement, long line, long column, String what) {
    assertThat(problems(Sheets.exampleWith(piece, replacement)))
        .anySatisfy(
            problem -> {
              assertThat(problem.what()).startsWith(what);
              assertThat(problem.line()).as("line").isEqualTo(line);
              assertThat(problem.column()).as("column").isEqualTo(column);
              assertThat(problem.file()).isEqualTo("station.json");
              assertThat(problem.remedy()).isNotBlank();
            });
  }

  @Test
  void everyProblemIsNamedAtOnceInTheOrderMet() {
    assertThat(problems("{\"format\": \"rimebook-station/1\", \"wires\": [{}], \"channels\": [1]}"))
        .extracting(Problem::what)
        .containsExactly(
            "name is absent or null",
            "utc_offset is absent or null",
            "gauge.orifice_area_cm2 is absent or null",
            "wires.name is absent or null",
            "wires.frequency_column is absent or null",
            "wires.calibrations holds no calibration",
            "record.time_column is absent or null",
            "channels must be an object, not 1.0",
            "channels.quantity is absent or null",
            "channels.column is absent or null",
            "channels.unit is absent or null");
  }

  @Test
  void theMessageOfManyProblemsHasOneOnEachLine() {
    assertThat(
            catchThrowableOfType(
                InputException.class, () -> StationSheetReader.read("[]", "station.json")))
        .hasMessageStartingWith(
            "station.json, line 1, column 1: the file must be an object, not a list. Write it in"
                + " braces: { ... }\nstation.json, line 1, column 1: format is absent or null.");
  }

  @Test
  void twoWiresOfOneNameAreRefused() {
    String wire = "\"name\": \"north\", \"frequency_column\": \"f1_hz\"";
    assertThat(
            problems(
                Sheets.exampleWith(
                    "{" + wire, "{" + wire + ", \"calibrations\": [{}]},\n    {" + wire)))
        .extracting(Problem::what)
        .contains("wires.name \"north\" is used twice");
  }

  @Test
  void twoWiresOfOneColumnAreRefusedWhereTheSecondNamesIt() {
    String wire = "{\"name\": \"north\", \"frequency_column\": \"f1_hz\"";
    String other = "{\"name\": \"south\", \"frequency_column\": \"f1_hz\"";
    assertThat(problems(Sheets.exampleWith(wire, other + ", \"calibrations\": [{}]},\n" + wire)))
        .extracting(Problem::what, Problem::line, Problem::column)
        .contains(tuple("wires.frequency_column \"f1_hz\" is another wire's too", 9L, 39L));
  }

  @Test
  void oneQuantityOfOneColumnTwiceIsRefused() {
    String channel = "{\"quantity\": \"air_temperature\", \"column\": \"air_temp_c\", ";
    String twice = channel + "\"unit\": \"degF\"},\n" + channel;
    assertThat(problems(Sheets.exampleWith(channel, twice)))
        .extracting(Problem::what, Problem::line, Problem::column)
        .containsExactly(
            tuple("channels.column \"air_temp_c\" is given for air_temperature twice", 14L, 43L));
    String other = twice.replaceFirst("air_temp_c", "box_temp_c");
    assertThatCode(() -> StationSheetReader.read(Sheets.exampleWith(channel, other), "a"))
        .doesNotThrowAnyException();
  }

  @Test
  void aSheetWithoutWiresIsRefused() {
    assertThat(problems("{\"wires\": []}"))
        .extracting(Problem::what)
        .contains("wires holds no wire");
  }

  @Test
  void calibrationsOutOfOrderAreRefusedWhereTheOrderBreaks() {
    String second = "\"a_cm_per_hz\": 1, \"b_cm_per_hz2\": 1, \"f0_hz\": 1}";
    String text =
        Sheets.exampleWith(
            "\"f0_hz\": 1050.1}",
            "\"f0_hz\": 1050.1},\n{\"from\": \"2025-01-02T00:00Z\", "
                + second
                + ",\n{\"from\": \"2025-01-01T00:00Z\", "
                + second
                + ",\n{"
                + second);
    assertThat(problems(text))
        .extracting(Problem::what, Problem::line)
        .containsExactly(
            tuple("wires.calibrations.from isn't later than the calibration before it", 11L),
            tuple("wires.calibrations.from isn't later than the calibration before it", 12L));
  }

  @Test
  void anUnreadableDateIsOneProblemNotTwo() {
    String text =
        Sheets.exampleWith(
            "\"f0_hz\": 1050.1}",
            "\"f0_hz\": 1050.1}, {\"from\": \"soon\", \"a_cm_per_hz\": 1, \"b_cm_per_hz2\": 1,"
                + " \"f0_hz\": 1}");
    assertThat(problems(text)).hasSize(1);
  }

  @Test
  void oneCharacterCannotBothDelimitAndMarkDecimals() {
    assertThat(
            problems(
                Sheets.exampleWith(
                    "\"missing\"", "\"delimiter\": \",\", \"decimal\": \",\", \"missing\"")))
        .extracting(Problem::what)
        .containsExactly("record.decimal is the delimiter too");
  }
}
