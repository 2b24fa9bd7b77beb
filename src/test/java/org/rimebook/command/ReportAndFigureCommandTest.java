package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.fixture.Terminal;

class ReportAndFigureCommandTest {

  @TempDir private Path folder;

  private Path season;

  @BeforeEach
  void makeSeason() throws IOException {
    season = Files.createDirectories(folder.resolve("season"));
    KeptSeason.in(season);
  }

  @Test
  void theReportIsWrittenBesideTheTables() {
    Path out = folder.resolve("out");
    Terminal run = Terminal.run("totals", season, "--out", out);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("report.pdf");
    assertThat(out.resolve("report.pdf")).exists();
  }

  @Test
  void withoutReportOnlyTablesAreWritten() {
    Path out = folder.resolve("out");
    Terminal run = Terminal.run("totals", season, "--out", out, "--no-report");
    assertThat(run.out()).doesNotContain("report.pdf");
    assertThat(out.resolve("report.pdf")).doesNotExist();
    assertThat(out.resolve("daily.csv")).exists();
  }

  @Test
  void theReportAloneIsTheOneBesideTheTables() throws IOException {
    Path out = folder.resolve("out");
    Terminal.run("totals", season, "--out", out);
    Path alone = folder.resolve("new").resolve("alone.pdf");
    assertThat(Terminal.run("report", season, "--out", alone).code()).isZero();
    assertThat(alone).hasSameBinaryContentAs(out.resolve("report.pdf"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.svg", "a.pdf", "a.PNG"})
  void aFigureIsWrittenAsItsEndingSays(String name) {
    Path out = folder.resolve(name);
    Terminal run = Terminal.run("figure", season, "--out", out, "--dpi", "72");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(out).isNotEmptyFile();
  }

  @ParameterizedTest
  @CsvSource({
    "report,--out,a.txt,ends in .pdf",
    "figure,--out,a.jpeg,'.svg, .pdf or .png'",
    "report,--out,season/records/a.pdf,logger files",
    "figure,--out,season/records/a.svg,logger files"
  })
  void anUnusableNameIsRefused(String command, String option, String file, String words) {
    Terminal run = Terminal.run(command, season, option, folder.resolve(file));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(words);
    assertThat(folder.resolve(file)).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({
    "--width-mm,5,30 to 2000",
    "--from,2031-01-01,leave nothing",
    "--show,depth;tides,isn't a strip",
    "--dpi,100000,--dpi goes from"
  })
  void whatAFigureCantShowIsRefused(String option, String value, String words) {
    Path out = folder.resolve("a.png");
    Terminal run = Terminal.run("figure", season, "--out", out, option, value.replace(';', ','));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(words);
    assertThat(out).doesNotExist();
  }

  @Test
  void aFolderInTheWayIsLeftAlone() throws IOException {
    Path out = Files.createDirectories(folder.resolve("a.pdf"));
    Terminal run = Terminal.run("report", season, "--out", out);
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("a folder of that name is in the way");
    assertThat(out).isEmptyDirectory();
  }
}
