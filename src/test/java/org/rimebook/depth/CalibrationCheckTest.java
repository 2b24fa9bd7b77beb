package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimebook.station.Calibration;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheet;

class CalibrationCheckTest {

  private static StationSheet sheet(OptionalDouble capacityMm, double a, double b, double f0) {
    Calibration calibration = new Calibration(Optional.empty(), a, b, f0);
    return Gauges.sheet(List.of(Gauges.wire("north", calibration)), capacityMm);
  }

  private static CalibrationCheck check(double a, double b, double f0) throws InputException {
    return CalibrationCheck.of(sheet(OptionalDouble.of(600), a, b, f0), "station.json");
  }

  @Test
  void anIdealWireIsAcceptedWithoutAlert() throws InputException {
    assertThat(check(0.0172, 0.0172 / 2100, 1050).alerts()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"1.14, 0", "0.86, 0", "1.16, 1", "0.84, 1"})
  void aRatioMoreThanFifteenHundredthsOffIsAlerted(double ratio, int alerts) throws InputException {
    List<String> said = check(0.0172 * ratio, 0.0172 / 2100, 1050).alerts();
    assertThat(said).hasSize(alerts);
    assertThat(said).allSatisfy(s -> assertThat(s).contains("\"north\"").contains("" + ratio));
  }

  @Test
  void aStraightLineIsAcceptedWithAnAlert() throws InputException {
    assertThat(check(0.03, 0, 1050).alerts()).singleElement().asString().contains("B = 0");
  }

  @ParameterizedTest
  @CsvSource({
    "0.0172, 8.2e-6, 0, f0",
    "0.0172, 8.2e-6, -1050, f0",
    "0, 8.2e-6, 1050, A = 0",
    "-0.0172, -8.2e-6, 1050, A = -0.0172",
    "-0.0172, 8.2e-6, 1050, A = -0.0172",
    "0.0172, -8.2e-6, 1050, turns back",
    "0.0001, 8.2e-5, 1050, turns back",
    "NaN, 8.2e-6, 1050, A = NaN"
  })
  void aCalibrationThatDoesNotRiseOverItsRangeIsRefused(
      double a, double b, double f0, String said) {
    assertThatThrownBy(() -> check(a, b, f0))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("station.json")
        .hasMessageContaining("\"north\"")
        .hasMessageContaining(said)
        .hasMessageContaining("Compare A, B and f0");
  }

  @Test
  void theCapacityDecidesHowFarACalibrationMustRise() throws InputException {
    // With B < 0 the curve turns at A²/(4|B|) = 100 cm.
    double a = 0.02;
    double b = -1e-6;
    assertThat(CalibrationCheck.of(sheet(OptionalDouble.of(600), a, b, 1050), "s").alerts())
        .hasSize(1);
    StationSheet larger = sheet(OptionalDouble.of(1000), a, b, 1050);
    assertThatThrownBy(() -> CalibrationCheck.of(larger, "s")).hasMessageContaining("1100 mm");
    StationSheet unknown = sheet(OptionalDouble.empty(), a, b, 1050);
    assertThatThrownBy(() -> CalibrationCheck.of(unknown, "s"))
        .hasMessageContaining("1650 mm")
        .hasMessageContaining("capacity_mm");
  }

  @Test
  void everyBadCalibrationIsNamedAtOnce() {
    Calibration bad = new Calibration(Optional.empty(), -1, 0, 1050);
    Calibration late = new Calibration(Optional.of(Gauges.START), -1, 0, 1050);
    StationSheet sheet =
        Gauges.sheet(
            List.of(
                Gauges.wire("north", bad),
                Gauges.wire("south", Gauges.IDEAL, late),
                Gauges.wire("east", Gauges.IDEAL)),
            OptionalDouble.of(600));
    assertThatThrownBy(() -> CalibrationCheck.of(sheet, "station.json"))
        .isInstanceOfSatisfying(InputException.class, e -> assertThat(e.problems()).hasSize(2))
        .hasMessageContaining("\"south\" from " + Gauges.START);
  }
}
