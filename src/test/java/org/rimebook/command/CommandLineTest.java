package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;
import org.rimebook.season.Version;

class CommandLineTest {

  private static final Path SEASON = Path.of("sample-sets", "hard-winter");

  @TempDir private Path folder;

  private Path changed(String what, String with) throws IOException {
    Path season = Copies.of(SEASON, folder.resolve("season"));
    Path sheet = season.resolve("station.json");
    Files.writeString(sheet, Files.readString(sheet).replace(what, with));
    return season;
  }

  @Test
  void theVersionIsThatOfTheBuild() throws IOException {
    String version = "rimebook " + Version.number();
    assertThat(Terminal.run("--version").out().strip()).isEqualTo(version);
    assertThat(Terminal.run("totals", "--version").out().strip()).isEqualTo(version);
    assertThat(Files.readString(Path.of("pom.xml")))
        .contains("<version>" + Version.number() + "</version>");
  }

  @Test
  void helpShowsEveryCommandAndExamples() {
    assertThat(Terminal.run("--help").out())
        .contains("totals", "inspect", "new", "Examples:", "--resolution 0.01", "Exit codes");
  }

  @Test
  void aMissingOptionIsWrongUse() {
    Terminal run = Terminal.run("totals", SEASON);
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(run.err()).contains("--out=DIR");
  }

  @Test
  void anotherResolutionIsWrongUse() {
    Terminal run = Terminal.run("totals", SEASON, "--out", folder, "--resolution", "0.5");
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(run.err()).contains("use 0.1 or 0.01, not '0.5'");
  }

  @Test
  void aFolderWithoutSheetIsUnreadableAndNamesTheWayOut() {
    Terminal run = Terminal.run("totals", folder, "--out", folder.resolve("out"));
    assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("station.json", "rimebook new " + folder);
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void anAbsentColumnNamesFileLineAndTheNearestNames() throws IOException {
    Terminal run = Terminal.run("inspect", changed("\"f2_hz\"", "\"f22_hz\""));
    assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("records/2024-10.csv.gz", "line 2", "f22_hz", "f2_hz");
  }

  @Test
  void aCalibrationThatTurnsBackIsRefusedInWords() throws IOException {
    Path season = changed("7.9E-6", "-7.9E-6");
    Terminal run = Terminal.run("totals", season, "--out", folder.resolve("out"));
    assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("hill", "turns back");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void anUnwritableFolderLeavesNothingBehind() throws IOException {
    Path file = Files.createFile(folder.resolve("taken"));
    Terminal run = Terminal.run("totals", SEASON, "--out", file);
    assertThat(run.code()).isEqualTo(ExitCode.NOT_MADE);
    assertThat(run.err()).contains("taken", "--out");
    assertThat(Copies.bytes(folder)).containsOnlyKeys("taken");
  }

  @Test
  void aFolderInTheWayKeepsAllTablesAsTheyWere() throws IOException {
    Files.writeString(folder.resolve("hourly.csv"), "mine");
    Files.createDirectory(folder.resolve("season.json"));
    Terminal run = Terminal.run("totals", SEASON, "--out", folder);
    assertThat(run.code()).isEqualTo(ExitCode.NOT_MADE);
    assertThat(run.err()).contains("season.json", "in the way");
    assertThat(Copies.bytes(folder)).containsOnlyKeys("hourly.csv").containsValue("mine");
  }

  @Test
  void tablesAreNotWrittenAmongTheLoggerFiles() throws IOException {
    Path season = Copies.of(SEASON, folder.resolve("season"));
    Terminal run = Terminal.run("totals", season, "--out", season.resolve("records"));
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(Copies.bytes(season)).isEqualTo(Copies.bytes(SEASON));
  }

  @Test
  void aDamagedNotebookLineIsNotedAndTheRestCounts() throws IOException {
    Path season = Copies.of(SEASON, folder.resolve("season"));
    Path notebook = season.resolve("notebook.jsonl");
    Files.writeString(notebook, Files.readString(notebook) + "{\"id\": \"x\", \"kind\":");
    Terminal damaged = Terminal.run("totals", season, "--out", folder.resolve("damaged"));
    Terminal.run("totals", SEASON, "--out", folder.resolve("whole"), "--no-report");
    assertThat(damaged.code()).isEqualTo(0);
    assertThat(damaged.err()).contains("notebook.jsonl, line");
    assertThat(Files.readString(folder.resolve("damaged/daily.csv")))
        .isEqualTo(Files.readString(folder.resolve("whole/daily.csv")));
  }

  @Test
  void inspectFitsAScreenAndItsLinesAddUp() {
    Terminal run = Terminal.run("inspect", SEASON);
    assertThat(run.code()).isEqualTo(0);
    assertThat(run.out().lines().count()).isLessThanOrEqualTo(40);
    assertThat(run.out())
        .contains("600 s", "300 s", "coverage", "wire-replaced", "clock far from its neighbours")
        .contains("37740 = 37490 used + 250 not taken");
  }
}
