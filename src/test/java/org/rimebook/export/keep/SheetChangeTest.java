package org.rimebook.export.keep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.station.Calibration;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheet;
import org.rimebook.station.StationSheetReader;
import org.rimebook.station.Wire;

class SheetChangeTest {

  private static final Instant JUNE = Instant.parse("2025-06-01T18:00:00Z");
  private static final Calibration FITTED =
      new Calibration(Optional.of(JUNE), 0.0171, 8.3e-6, 1051);

  @TempDir private Path folder;

  @BeforeEach
  void copy() throws IOException {
    Files.copy(Path.of("sample-sets", "hard-winter", "station.json"), file());
  }

  private Path file() {
    return folder.resolve("station.json");
  }

  private String text() throws IOException {
    return Files.readString(file());
  }

  private Wire creek() throws IOException, InputException {
    StationSheet sheet = StationSheetReader.read(text(), "station.json").sheet();
    return sheet.wires().stream().filter(w -> w.name().equals("creek")).findFirst().orElseThrow();
  }

  @Test
  void aCalibrationIsAddedAfterThoseTheWireHas() throws IOException, InputException {
    List<Calibration> before = creek().calibrations();
    SheetChange.addCalibration(folder, "creek", FITTED);
    assertThat(creek().calibrations())
        .hasSize(before.size() + 1)
        .startsWith(before.toArray(Calibration[]::new))
        .endsWith(FITTED);
  }

  @Test
  void whatThisVersionDoesNotKnowIsKept() throws IOException, InputException {
    Files.writeString(file(), text().replaceFirst("\\{", "{ \"owner\": \"who\","));
    SheetChange.addCalibration(folder, "creek", FITTED);
    SheetChange.stateTemperature(folder, List.of("creek"), OptionalDouble.of(-3e-5));
    assertThat(text()).contains("\"owner\": \"who\"");
  }

  @Test
  void aCalibrationNoLaterThanTheLastIsRefusedAndTheSheetIsAsItWas()
      throws IOException, InputException {
    SheetChange.addCalibration(folder, "creek", FITTED);
    String before = text();
    assertThatThrownBy(() -> SheetChange.addCalibration(folder, "creek", FITTED))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("2025-06-01T18:00:00Z")
        .hasMessageContaining("later");
    assertThat(text()).isEqualTo(before);
  }

  @Test
  void aWireThatIsNotThereIsNamedWithThoseThatAre() {
    assertThatThrownBy(() -> SheetChange.addCalibration(folder, "nowhere", FITTED))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("nowhere")
        .hasMessageContaining("creek, hill, road");
  }

  @Test
  void aCoefficientIsStatedSwitchedOffAndTakenBack() throws IOException, InputException {
    String before = text();
    SheetChange.stateTemperature(folder, List.of("creek"), OptionalDouble.of(-4e-5));
    assertThat(creek().temperaturePerDegC()).hasValue(-4e-5);
    SheetChange.stateTemperature(folder, List.of("creek"), OptionalDouble.of(0));
    assertThat(creek().temperaturePerDegC()).hasValue(0);
    SheetChange.stateTemperature(folder, List.of("creek"), OptionalDouble.empty());
    assertThat(text()).isEqualTo(before);
  }

  @Test
  void aCoefficientNoWireHasIsRefused() throws IOException {
    String before = text();
    for (double perDegC : new double[] {0.01, -0.01, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(
              () ->
                  SheetChange.stateTemperature(
                      folder, List.of("creek"), OptionalDouble.of(perDegC)))
          .isInstanceOf(InputException.class);
    }
    assertThat(text()).isEqualTo(before);
  }

  @Test
  void nothingUnfinishedIsLeft() throws IOException, InputException {
    SheetChange.stateTemperature(folder, List.of("creek"), OptionalDouble.of(-4e-5));
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(file());
    }
  }

  @Test
  void aSheetThatIsNotThereIsNamed() throws IOException {
    Files.delete(file());
    assertThatThrownBy(() -> SheetChange.addCalibration(folder, "creek", FITTED))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("station.json");
  }
}
