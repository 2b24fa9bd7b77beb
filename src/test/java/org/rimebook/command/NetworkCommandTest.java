package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.fixture.Terminal;

class NetworkCommandTest {

  private static final String REMARK =
      "{\"id\":\"n-1\",\"at\":\"2025-06-01T10:00:00-07:00\",\"by\":\"ab\",\"kind\":\"remark\","
          + "\"note\":\"quiet\"}";
  private static final List<String> SEASONS = List.of("east/a", "east/b", "west");

  @TempDir private Path temp;
  private Path root;
  private Path out;

  @BeforeEach
  void makeNetwork() throws IOException {
    root = temp.resolve("gauges");
    out = temp.resolve("tables");
    for (String season : SEASONS) {
      KeptSeason.in(Files.createDirectories(root.resolve(season)));
    }
    rename("west", "Invented, \"West\"");
  }

  private void rename(String season, String name) throws IOException {
    Path sheet = root.resolve(season).resolve("station.json");
    String quoted = name.replace("\"", "\\\"");
    Files.writeString(sheet, Files.readString(sheet).replace("Invented Ridge", quoted));
  }

  private Terminal run(Object... options) {
    Object[] words = new Object[options.length + 4];
    List.of("network", root, "--out", out).toArray(words);
    System.arraycopy(options, 0, words, 4, options.length);
    return Terminal.run(words);
  }

  private Terminal done(Object... options) {
    Terminal run = run(options);
    assertThat(run.code()).as(run.out() + run.err()).isEqualTo(ExitCode.DONE);
    return run;
  }

  @Test
  void everySeasonGetsTheBytesThatTotalsMakesOfItAlone() throws IOException {
    done("--resolution", "0.01");
    for (String season : SEASONS) {
      Path alone = temp.resolve("alone").resolve(season);
      Terminal.run(
          "totals", root.resolve(season), "--out", alone, "--resolution", "0.01", "--no-report");
      assertThat(Copies.bytes(out.resolve(season)))
          .containsAllEntriesOf(Copies.bytes(alone))
          .hasSize(4);
    }
  }

  @Test
  void theTableSumsUpEverySeasonInTheOrderOfTheirFolders() throws IOException {
    assertThat(done().out()).startsWith("3 of 3 seasons made");
    List<String> lines = Files.readString(out.resolve("network.csv")).lines().toList();
    assertThat(lines)
        .first()
        .isEqualTo(
            "station,from,to,catch_mm,uncertainty_mm,completeness_pct,worst_quality,"
                + "findings_open,folder,state,error");
    assertThat(lines.get(1))
        .startsWith("Invented Ridge,2025-01-10T00:00:00-07:00,2025-01-10T03:00:00-07:00,0.0,")
        .endsWith(",east/a,made,");
    assertThat(lines.get(3)).startsWith("\"Invented, \"\"West\"\"\",").contains(",west,made,");
    assertThat(Files.readString(out.resolve("network.svg"))).contains("Catch of the season (mm)");
  }

  @Test
  void threadsAndEarlierRunsChangeNoByte() throws IOException {
    done("--at-a-time", "1");
    SortedMap<String, String> first = Copies.bytes(out);
    done("--at-a-time", "4");
    assertThat(Copies.bytes(out)).isEqualTo(first);
    done("--at-a-time", "3", "--anew");
    assertThat(Copies.bytes(out)).isEqualTo(first);
  }

  @Test
  void aSeasonIsMadeAgainOnlyWhenSomethingOfItChanged() throws IOException {
    done();
    assertThat(done().err()).contains("east/a: kept", "east/b: kept", "west: kept");
    Files.writeString(root.resolve("east/b/notebook.jsonl"), REMARK + "\n");
    assertThat(done().err()).contains("east/a: kept", "east/b: made", "west: kept");
    Path log = root.resolve("west/records/log.csv");
    Files.writeString(log, Files.readString(log).replace("2900.1", "2900.2"));
    rename("east/a", "Renamed");
    assertThat(done().err()).contains("east/a: made", "east/b: kept", "west: made");
    assertThat(done("--resolution", "0.01").err()).doesNotContain("kept");
    assertThat(done("--resolution", "0.01", "--anew").err()).doesNotContain("kept");
  }

  @Test
  void aRunThatWasBrokenOffGoesOn() throws IOException {
    done();
    SortedMap<String, String> whole = Copies.bytes(out);
    Files.delete(out.resolve("east/a/datapackage.json"));
    Files.delete(out.resolve("network.csv"));
    Path hourly = out.resolve("east/b/hourly.csv");
    Files.writeString(hourly, Files.readString(hourly).substring(0, 100));
    Files.writeString(out.resolve("west/.hourly.csv.part"), "half a");
    assertThat(done().err()).contains("east/a: made", "east/b: made", "west: kept");
    Files.deleteIfExists(out.resolve("west/.hourly.csv.part"));
    assertThat(Copies.bytes(out)).isEqualTo(whole);
  }

  @Test
  void aBadSeasonIsListedWithItsErrorAndStopsNoOther() throws IOException {
    Path sheet = root.resolve("east/b/station.json");
    Files.writeString(sheet, Files.readString(sheet).replace("\"f2\"", "\"f22\""));
    Terminal run = run();
    assertThat(run.code()).isEqualTo(ExitCode.NOT_MADE);
    assertThat(run.out()).startsWith("2 of 3 seasons made").contains("east/b: records/log.csv");
    assertThat(Files.readString(out.resolve("network.csv")))
        .contains(",east/a,made,", ",west,made,")
        .contains(",,,,,,,,east/b,failed,")
        .contains("f22");
    assertThat(out.resolve("east/b")).doesNotExist();
  }

  @Test
  void tablesAreNotWrittenIntoASeasonFolder() throws IOException {
    SortedMap<String, String> before = Copies.bytes(root);
    for (Path inside : List.of(root.resolve("west"), root.resolve("west/records"))) {
      Terminal run = Terminal.run("network", root, "--out", inside);
      assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
      assertThat(run.err()).contains("lies in the season folder west", "--out");
    }
    assertThat(Copies.bytes(root)).isEqualTo(before);
  }

  @Test
  void aSeasonWhoseTablesWouldBeReadAsItsRecordIsLeftOut() throws IOException {
    Path season = root.resolve("west");
    Path sheet = season.resolve("station.json");
    Files.writeString(sheet, Files.readString(sheet).replace("records/*.csv", "*.csv"));
    Files.move(season.resolve("records/log.csv"), season.resolve("log.csv"));
    SortedMap<String, String> before = Copies.bytes(season);
    Terminal run = Terminal.run("network", root, "--out", root);
    assertThat(run.code()).isEqualTo(ExitCode.NOT_MADE);
    assertThat(run.out()).startsWith("2 of 3 seasons made").contains("would be read as such");
    assertThat(Copies.bytes(season)).isEqualTo(before);
  }

  @Test
  void hiddenFoldersAndTheFolderOfTheTablesAreNotLookedInto() throws IOException {
    KeptSeason.in(Files.createDirectories(root.resolve(".old/season")));
    KeptSeason.in(Files.createDirectories(root.resolve("tables/season")));
    out = root.resolve("tables");
    assertThat(done().out()).startsWith("3 of 3 seasons made");
  }

  @Test
  void aSeasonIsANetworkOfItsOwn() {
    Terminal run = Terminal.run("network", root.resolve("west"), "--out", out);
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(out.resolve("west/daily.csv")).isRegularFile();
  }

  @Test
  void anEmptyNetworkIsWrongUse() {
    Terminal run = Terminal.run("network", root.resolve("west/records"), "--out", out);
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(run.err()).contains("no folder in it holds station.json");
    assertThat(Terminal.run("network", temp.resolve("no"), "--out", out).err())
        .contains("isn't a folder");
    assertThat(run("--at-a-time", "0").code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(out).doesNotExist();
  }
}
