package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.fixture.Terminal;

class VerifyCommandTest {

  private static final String REMARK =
      "{\"id\":\"n-1\",\"at\":\"2025-06-01T10:00:00-07:00\",\"by\":\"ab\",\"kind\":\"remark\","
          + "\"note\":\"quiet\"}";
  private static final String WITHDRAWAL =
      "{\"id\":\"n-2\",\"at\":\"2025-06-02T10:00:00-07:00\",\"by\":\"ab\",\"kind\":\"withdrawal\","
          + "\"entry\":\"n-1\"}";
  private static final String NOISE =
      "{\"id\":\"n-3\",\"at\":\"2025-06-01T10:00:00-07:00\",\"by\":\"ab\","
          + "\"kind\":\"bad-interval\",\"from\":\"2025-01-10T00:30:00-07:00\","
          + "\"to\":\"2025-01-10T01:00:00-07:00\",\"wires\":[\"north\"],\"reason\":\"noise\"}";

  @TempDir private Path temp;
  private Path season;
  private Path tables;
  private KeptSeason kept;

  @BeforeEach
  void makeSeason() throws IOException {
    season = Files.createDirectory(temp.resolve("season"));
    tables = temp.resolve("tables");
    kept = KeptSeason.in(season);
  }

  private void export(Object... options) {
    Object[] words = new Object[options.length + 4];
    List.of("totals", season, "--out", tables).toArray(words);
    System.arraycopy(options, 0, words, 4, options.length);
    Terminal run = Terminal.run(words);
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
  }

  private Terminal verify() {
    return Terminal.run("verify", season, "--against", tables);
  }

  private Terminal refuted() {
    Terminal run = verify();
    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(ExitCode.NOT_MADE);
    return run;
  }

  private void edit(Path file, UnaryOperator<String> change) throws IOException {
    String text = Files.readString(file);
    String changed = change.apply(text);
    assertThat(changed).isNotEqualTo(text);
    Files.writeString(file, changed);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.1", "0.01"})
  void tablesJustMadeFollowAtTheirOwnResolution(String resolution) throws IOException {
    kept.byHand(REMARK);
    export("--resolution", resolution);
    var before = Copies.bytes(temp);
    Terminal run = verify();
    assertThat(run.code()).as(run.out()).isEqualTo(ExitCode.DONE);
    assertThat(run.out())
        .contains("follow from", "at " + resolution + " mm", "hourly.csv follows")
        .contains("daily.csv follows", "season.json follows", "datapackage.json follows");
    assertThat(Copies.bytes(temp)).as("nothing is written").isEqualTo(before);
  }

  @Test
  void filesInOpenStandardsAreVerifiedWhereTheyAre() throws IOException {
    export("--also", "netcdf", "--also", "waterml2");
    Terminal run = verify();
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(run.out()).contains("totals.nc follows", "waterml2.xml follows");
    edit(tables.resolve("waterml2.xml"), text -> text.replaceFirst(">0.0<", ">0.7<"));
    byte[] netcdf = Files.readAllBytes(tables.resolve("totals.nc"));
    netcdf[netcdf.length - 1] ^= 1;
    Files.write(tables.resolve("totals.nc"), netcdf);
    assertThat(refuted().out())
        .contains("waterml2.xml doesn't follow: line ")
        .contains("says '<wml2:value>0.7</wml2:value>', the folder gives")
        .contains("totals.nc doesn't follow: byte " + netcdf.length);
  }

  @Test
  void aChangedNumberIsNamedByLineRowAndColumnWithBothValues() throws IOException {
    export();
    edit(tables.resolve("hourly.csv"), text -> text.replaceFirst(",0\\.0,", ",7.5,"));
    assertThat(refuted().out())
        .contains("hourly.csv doesn't follow: line 2 (2025-01-10T00:00:00-07:00), column catch_mm")
        .contains("says '7.5', the folder gives '0.0'")
        .contains("daily.csv follows")
        .contains("no input changed: the files themselves were");
  }

  @Test
  void anAddedEntryIsNamed() throws IOException {
    export();
    kept.byHand(NOISE);
    assertThat(refuted().out())
        .contains("notebook.jsonl: entry n-3 (bad-interval, 2025-01-10T00:30:00-07:00 to")
        .contains("was added")
        .doesNotContain("records/log.csv", "station.json: changed");
  }

  @Test
  void aWithdrawnEntryIsNamedWithTheEntryThatWithdrawsIt() throws IOException {
    kept.byHand(REMARK);
    export();
    kept.byHand(WITHDRAWAL);
    assertThat(refuted().out()).contains("entry n-1 (remark) was withdrawn by n-2");
  }

  @Test
  void anEntryThatIsGoneOrReadsOtherwiseIsNamed() throws IOException {
    kept.byHand(REMARK);
    kept.byHand(NOISE);
    export();
    edit(kept.notebook(), text -> text.replace(REMARK + "\n", "").replace("01:00:00", "01:15:00"));
    assertThat(refuted().out())
        .contains("entry n-1 is gone")
        .contains("entry n-3 (bad-interval,")
        .contains("reads otherwise than it did");
  }

  @Test
  void aChangedAddedOrLostLoggerFileIsNamed() throws IOException {
    Files.writeString(season.resolve("records/more.csv"), "time,f1,f2,f3\n");
    export();
    Files.move(season.resolve("records/more.csv"), season.resolve("records/other.csv"));
    edit(season.resolve("records/log.csv"), text -> text.replaceFirst("2900.1", "2900.2"));
    assertThat(refuted().out())
        .contains("records/log.csv: changed", "records/other.csv: was added")
        .contains("records/more.csv: is gone");
  }

  @Test
  void aChangedSheetAndAnotherVersionAreNamed() throws IOException {
    export();
    edit(season.resolve("station.json"), text -> text + "\n");
    edit(tables.resolve("season.json"), text -> text.replace("rimebook 0.", "rimebook 9."));
    assertThat(refuted().out())
        .contains("station.json: changed")
        .contains("the tables were made by rimebook 9.")
        .contains("hourly.csv follows");
  }

  @Test
  void tablesOfAnotherResolutionThanStatedAreSaidSo() throws IOException {
    export("--resolution", "0.01");
    Path summary = tables.resolve("season.json");
    String fine = Files.readString(tables.resolve("daily.csv"));
    export();
    Files.writeString(tables.resolve("daily.csv"), fine);
    assertThat(refuted().out())
        .contains("the resolution: the tables are printed to 0.01 mm, season.json says 0.1 mm");
    Files.delete(summary);
    assertThat(refuted().out())
        .contains("at 0.01 mm", "season.json isn't there", "daily.csv follows")
        .contains("which input changed isn't known");
  }

  @Test
  void aTruncatedTableIsSaidToEndEarly() throws IOException {
    export();
    edit(
        tables.resolve("hourly.csv"),
        text -> text.substring(0, text.indexOf('\n', text.indexOf('\n') + 1) + 1));
    assertThat(refuted().out()).contains("hourly.csv doesn't follow: ends after line 2;");
    edit(tables.resolve("hourly.csv"), text -> text.substring(0, text.length() - 30));
    assertThat(refuted().out()).containsPattern("hourly.csv doesn't follow: line 2.* too few");
  }

  @Test
  void aMarkOtherLineEndsAndAnotherOrderOfColumnsAreToldApart() throws IOException {
    export();
    edit(tables.resolve("hourly.csv"), text -> "\uFEFF" + text);
    edit(tables.resolve("daily.csv"), text -> text.replace("\n", "\r\n"));
    assertThat(refuted().out())
        .contains("line 1 starts with a byte order mark")
        .contains("line 1 ends in CR LF instead of LF");
    export();
    edit(tables.resolve("daily.csv"), text -> text.replace("start,end", "end,start"));
    edit(tables.resolve("hourly.csv"), text -> text.replace("catch_mm", "niederschlag"));
    assertThat(refuted().out())
        .contains("the columns stand in another order")
        .contains("it lacks catch_mm; it has niederschlag");
  }

  @Test
  void otherEncodingsAndUnclosedQuotesAreFoundAndNotFallenOver() throws IOException {
    export();
    byte[] utf16 = Files.readString(tables.resolve("daily.csv")).getBytes(StandardCharsets.UTF_16);
    Files.write(tables.resolve("daily.csv"), utf16);
    edit(tables.resolve("hourly.csv"), text -> text.replaceFirst("\n2025", "\n\"2025"));
    edit(tables.resolve("season.json"), text -> "{" + text);
    assertThat(refuted().out())
        .contains("daily.csv doesn't follow: line 1", "hourly.csv doesn't follow: line 2")
        .contains("season.json is missing or can't be read");
  }

  @Test
  void theReportIsVerifiedWithTheTables() throws IOException {
    assertThat(Terminal.run("totals", season, "--out", tables).code()).isEqualTo(ExitCode.DONE);
    Path report = tables.resolve("report.pdf");
    assertThat(report).isRegularFile();
    Terminal whole = verify();
    assertThat(whole.code()).as(whole.out() + whole.err()).isEqualTo(ExitCode.DONE);
    Files.writeString(report, "%PDF");
    Terminal run = verify();
    assertThat(run.code()).isEqualTo(ExitCode.NOT_MADE);
    assertThat(run.out()).contains("report.pdf");
  }

  @Test
  void aFolderWithoutTablesIsWrongUse() {
    Terminal run = Terminal.run("verify", season, "--against", season);
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(run.err()).contains("holds no table", "--against");
    assertThat(Terminal.run("verify", season, "--against", temp.resolve("no")).err())
        .contains("isn't a folder");
  }

  @Test
  void aSeasonThatCannotBeReadIsSaidSo() throws IOException {
    export();
    edit(season.resolve("station.json"), text -> text.replace("f2", "f22"));
    Terminal run = verify();
    assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("log.csv", "f22");
  }
}
