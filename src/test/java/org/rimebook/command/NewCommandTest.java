package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Terminal;

class NewCommandTest {

  private static final String RECORD =
      """
      STAMP;F1_Hz;F2_Hz;F3_Hz;AirTemp;WindSpeed;BattV;WindDir
      TS;Hz;Hz;Hz;degF;km/h;mV;deg
      2024-11-01 00:05;1712,3;1698,1;1750,9;23,5;10,1;12480;180
      2024-11-01 00:10;1712,4;1698,0;1750,8;23,4;11,0;12470;190
      2024-11-01 00:15;1712,3;1698,2;1750,9;23,4;12,2;12460;200
      """;

  @TempDir private Path folder;

  private Path withRecord() throws IOException {
    Path records = Files.createDirectories(folder.resolve("records"));
    Files.writeString(records.resolve("november.csv"), RECORD);
    return folder;
  }

  @Test
  void theDraftTakesWhatTheHeaderTells() throws IOException {
    Terminal run = Terminal.run("new", withRecord());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isEqualTo(0);
    assertThat(Files.readString(folder.resolve("station.json")))
        .contains("\"frequency_column\": \"F1_Hz\"", "\"frequency_column\": \"F3_Hz\"")
        .contains("\"time_column\": \"STAMP\"")
        .contains("\"column\": \"AirTemp\", \"unit\": \"degF\"")
        .contains("\"column\": \"WindSpeed\", \"unit\": \"km/h\"")
        .contains("\"column\": \"BattV\", \"unit\": \"mV\"")
        .doesNotContain("WindDir");
  }

  @Test
  void readingTheDraftNamesEverythingLeftToEnter() throws IOException {
    Terminal.run("new", withRecord());
    Terminal run = Terminal.run("inspect", folder);
    assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err())
        .contains("utc_offset", "orifice_area_cm2", "a_cm_per_hz", "b_cm_per_hz2", "f0_hz");
  }

  @Test
  void theDraftRunsOnceItIsFilledIn() throws IOException {
    Terminal.run("new", withRecord());
    Path sheet = folder.resolve("station.json");
    String filled =
        Files.readString(sheet)
            .replace("\"utc_offset\": null", "\"utc_offset\": \"+01:00\"")
            .replace("\"orifice_area_cm2\": null", "\"orifice_area_cm2\": 200")
            .replace("\"a_cm_per_hz\": null", "\"a_cm_per_hz\": 0.0172")
            .replace("\"b_cm_per_hz2\": null", "\"b_cm_per_hz2\": 8.2e-6")
            .replace("\"f0_hz\": null", "\"f0_hz\": 1050.1");
    Files.writeString(sheet, filled);
    Terminal run = Terminal.run("totals", folder, "--out", folder.resolve("out"));
    assertThat(run.err()).contains("adjusted_mm stays empty", "wind_shield");
    assertThat(run.code()).isEqualTo(0);
  }

  @Test
  void aSheetThatIsThereIsLeftAsItIs() throws IOException {
    Path sheet = withRecord().resolve("station.json");
    Files.writeString(sheet, "mine");
    Terminal run = Terminal.run("new", folder);
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(Files.readString(sheet)).isEqualTo("mine");
  }

  @Test
  void aFolderWithoutLoggerFilesSaysWhereTheyBelong() {
    Terminal run = Terminal.run("new", folder);
    assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("records");
  }
}
