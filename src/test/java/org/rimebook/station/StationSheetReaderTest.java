package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StationSheetReaderTest {

  private static StationSheet read(String text) throws InputException {
    return StationSheetReader.read(text, "station.json").sheet();
  }

  @Test
  void theContractsExampleIsReadWholly() throws InputException {
    StationSheetReader.Reading reading = StationSheetReader.read(Sheets.EXAMPLE, "station.json");
    assertThat(reading.unknownMembers()).isEmpty();
    assertThat(reading.sheet())
        .isEqualTo(
            new StationSheet(
                "Example Ridge",
                OptionalDouble.of(53.2),
                OptionalDouble.of(-117.1),
                OptionalDouble.of(1490),
                ZoneOffset.ofHours(-7),
                LocalTime.MIDNIGHT,
                new Gauge(
                    200, OptionalDouble.of(600), OptionalDouble.of(2), WindShield.SINGLE_ALTER),
                List.of(
                    new Wire(
                        "north",
                        "f1_hz",
                        Optional.of("red"),
                        List.of(new Calibration(Optional.empty(), 0.0172, 8.2e-6, 1050.1)))),
                exampleLayout(),
                List.of(
                    channel("air_temperature", "air_temp_c", Unit.DEG_C, OptionalDouble.empty()),
                    channel("wind_speed", "wind_ms", Unit.METRE_PER_SECOND, OptionalDouble.of(10)),
                    channel("supply_voltage", "battery_v", Unit.VOLT, OptionalDouble.empty()))));
  }

  private static RecordLayout exampleLayout() {
    return new RecordLayout(
        List.of("records/*.csv"),
        "time",
        List.of("NAN", "-9999"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        RecordLayout.TimeIs.END,
        RecordLayout.FrequencyKind.HERTZ,
        OptionalDouble.empty());
  }

  private static Channel channel(String quantity, String column, Unit unit, OptionalDouble height) {
    return new Channel(quantity, column, unit, height);
  }

  @Test
  void whatALeastSheetLeavesOutHasItsDefault() throws InputException {
    StationSheet sheet = read(Sheets.LEAST);
    assertThat(sheet.latitudeDeg()).isEmpty();
    assertThat(sheet.longitudeDeg()).isEmpty();
    assertThat(sheet.elevationM()).isEmpty();
    assertThat(sheet.dayStartsAt()).isEqualTo(LocalTime.MIDNIGHT);
    assertThat(sheet.gauge())
        .isEqualTo(
            new Gauge(200, OptionalDouble.empty(), OptionalDouble.empty(), WindShield.OTHER));
    assertThat(sheet.wires().get(0).lead()).isEmpty();
    assertThat(sheet.layout().files()).containsExactly("records/*.csv", "records/*.csv.gz");
    assertThat(sheet.layout().missing()).isEmpty();
    assertThat(sheet.layout().timeIs()).isEqualTo(RecordLayout.TimeIs.END);
    assertThat(sheet.layout().frequencyKind()).isEqualTo(RecordLayout.FrequencyKind.HERTZ);
    assertThat(sheet.channels()).isEmpty();
    assertThat(sheet.channel(Channel.WIND_SPEED)).isEmpty();
  }

  @Test
  void theRecordsLayoutCanBeSaidOutright() throws InputException {
    RecordLayout layout =
        read(Sheets.exampleWith(
                "\"time_column\": \"time\"",
                """
                "time_column": "time", "delimiter": ";", "decimal": ",", "time_is": "start",
                "time_format": "dd.MM.yyyy HH:mm", "frequency_kind": "counts", "gate_s": 2.5
                """))
            .layout();
    assertThat(layout.delimiter()).contains(';');
    assertThat(layout.decimal()).contains(',');
    assertThat(layout.timeFormat()).contains("dd.MM.yyyy HH:mm");
    assertThat(layout.timeIs()).isEqualTo(RecordLayout.TimeIs.START);
    assertThat(layout.frequencyKind()).isEqualTo(RecordLayout.FrequencyKind.COUNTS);
    assertThat(layout.gateS()).hasValue(2.5);
  }

  @Test
  void aTabIsADelimiterHoweverItIsEscaped() throws InputException {
    for (String tab : List.of("\\t", "\\\\t", "\\u0009")) {
      String text =
          Sheets.exampleWith("\"time_column\"", "\"delimiter\": \"" + tab + "\", \"time_column\"");
      assertThat(read(text).layout().delimiter()).as(tab).contains('\t');
    }
  }

  @Test
  void calibrationsHoldFromTheirDate() throws InputException {
    Wire wire =
        read(Sheets.exampleWith(
                "\"f0_hz\": 1050.1}",
                """
                "f0_hz": 1050.1},
                {"from": "2025-01-15T10:30:00-07:00",
                 "a_cm_per_hz": 0.02, "b_cm_per_hz2": 9e-6, "f0_hz": 1001}
                """))
            .wires()
            .get(0);
    long replacedMs = Instant.parse("2025-01-15T17:30:00Z").toEpochMilli();
    assertThat(wire.calibrationAt(replacedMs - 1).f0Hz()).isEqualTo(1050.1);
    assertThat(wire.calibrationAt(replacedMs).f0Hz()).isEqualTo(1001);
    assertThat(wire.calibrationAt(Long.MAX_VALUE).f0Hz()).isEqualTo(1001);
  }

  @Test
  void theFirstCalibrationHoldsBeforeItsOwnDateToo() throws InputException {
    Wire wire =
        read(Sheets.exampleWith("\"from\": null", "\"from\": \"2025-01-15T10:30:00-07:00\""))
            .wires()
            .get(0);
    assertThat(wire.calibrationAt(0).f0Hz()).isEqualTo(1050.1);
  }

  @Test
  void theFirstChannelOfAQuantityIsTheOneUsed() throws InputException {
    StationSheet sheet =
        read(
            Sheets.exampleWith(
                "{\"quantity\": \"supply_voltage\", \"column\": \"battery_v\", \"unit\": \"V\"}",
                "{\"quantity\": \"wind_speed\", \"column\": \"wind_kn\", \"unit\": \"kn\"}"));
    assertThat(sheet.channel("wind_speed").orElseThrow().column()).isEqualTo("wind_ms");
  }

  @Test
  void membersNobodyKnowsAreListedOnceByTheirPath() throws InputException {
    String text =
        Sheets.EXAMPLE
            .replace("\"utc_offset\"", "\"owner\": {\"a\": 1}, \"utc_offset\"")
            .replace("\"capacity_mm\"", "\"colour\": \"grey\", \"capacity_mm\"")
            .replace("\"lead\"", "\"length_mm\": 50, \"lead\"")
            .replace("\"f0_hz\"", "\"sheet\": 7, \"f0_hz\"")
            .replace("\"missing\"", "\"logger\": null, \"missing\"")
            .replace("\"column\"", "\"sensor\": \"x\", \"column\"");
    assertThat(StationSheetReader.read(text, "station.json").unknownMembers())
        .containsExactlyInAnyOrder(
            "owner",
            "gauge.colour",
            "wires.length_mm",
            "wires.calibrations.sheet",
            "record.logger",
            "channels.sensor");
  }

  @Test
  void aByteOrderMarkAndOtherLineEndsMakeNoDifference() throws InputException {
    assertThat(read("\uFEFF" + Sheets.EXAMPLE.replace("\n", "\r\n")))
        .isEqualTo(read(Sheets.EXAMPLE));
  }
}
