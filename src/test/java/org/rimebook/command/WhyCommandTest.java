package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;

class WhyCommandTest {

  private static final Path SEASON = Path.of("sample-sets", "hard-winter");

  private static String why(String... arguments) {
    Object[] words = new Object[arguments.length + 3];
    words[0] = "why";
    words[1] = SEASON;
    words[2] = "--at";
    System.arraycopy(arguments, 0, words, 3, arguments.length);
    Terminal run = Terminal.run(words);
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    return run.out();
  }

  @Test
  void anHourNamesItsWiresItsEntryAndTheKindOfItsPieces() {
    assertThat(why("2025-01-15T10:00-07:00"))
        .startsWith("Quern Hollow, 2025-01-15T10:00:00-07:00 to 2025-01-15T11:00:00-07:00\n")
        .containsPattern("creek +6 readings used, none left out; 339")
        .containsPattern("hill +0 readings used, left out: 6 missing\n")
        .containsPattern("road +6 readings used, none left out; 339")
        .contains("1/2 each in 6 readings")
        .contains("hw-05 bad-interval (hill, wire-fault): Hill jumps about, then nothing.")
        .contains("dry: the readings show no catch")
        .contains("temperature:", "daily wave: evaporation of", "rounding");
  }

  @Test
  void theTotalIsThatOfTheTable(@TempDir Path folder) throws IOException {
    Terminal.run("totals", SEASON, "--out", folder, "--resolution", "0.01", "--no-report");
    String[] row =
        Files.readAllLines(folder.resolve("hourly.csv")).stream()
            .filter(line -> line.startsWith("2024-10-18T18:00:00-07:00,"))
            .findFirst()
            .orElseThrow()
            .split(",", -1);
    String total = "total     " + row[2] + " mm, standard uncertainty " + row[3] + " mm";
    assertThat(why("2024-10-18T18:20", "--resolution", "0.01"))
        .contains(total)
        .contains("wet: the readings show catch")
        .contains("entries   none touches it");
  }

  @Test
  void anHourInsideALateCatchPointsToTheTotalThatHoldsIt() {
    assertThat(why("2025-01-09T12:30"))
        .contains("none of its own")
        .contains("2025-01-10T12:00:00-07:00 to 2025-01-10T13:00:00-07:00")
        .contains("hw-04 late-catch", "late catch: timing unknown by an entry");
    assertThat(why("2025-01-10T12:30"))
        .contains("holds all that fell in 2025-01-08T03:00:00-07:00")
        .contains("what all catch may be off by together");
  }

  @Test
  void aDayStartsWhenTheStationSaysAndDepthsAcrossAVisitDontCompare() {
    assertThat(why("2025-01-22", "--day"))
        .startsWith("Quern Hollow, 2025-01-22T08:00:00-07:00 to 2025-01-23T08:00:00-07:00\n")
        .contains("8 service-visit", "which don't compare")
        .contains("hw-06 service-visit (emptied, ", "service visit: no change of level is catch");
  }

  @Test
  void aSeasonWithoutAnyUsableLevelIsExplainedToo(@TempDir Path folder) throws IOException {
    Path season = Copies.of(SEASON, folder.resolve("season"));
    Files.writeString(
        season.resolve("notebook.jsonl"),
        "{\"id\": \"a\", \"at\": \"2025-05-01T09:00:00-07:00\", \"by\": \"rw\","
            + " \"kind\": \"bad-interval\", \"from\": \"2024-10-01T00:00:00-07:00\","
            + " \"to\": \"2025-05-01T00:00:00-07:00\", \"note\": \"\", \"reason\": \"other\"}\n");
    Terminal run = Terminal.run("why", season, "--at", "2025-01-15T10:00-07:00");
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    assertThat(run.out())
        .contains("none: what fell isn't known", "no usable level", "no reading is used")
        .contains("left out: 6 bad-interval", "a bad-interval (all wires, other)\n")
        .contains("no level to compare: not known");
    Terminal.run("totals", season, "--out", folder.resolve("out"));
    assertThat(Files.readString(folder.resolve("out/season.json"))).doesNotContain("learnt");
  }

  @Test
  void anHourInAGapShowsTheWholeGapAndItsCatch() throws InputException {
    CatchSeries series = SeasonResult.of(Season.open(SEASON)).series();
    int gap = series.pieceAt(Instant.parse("2024-11-21T10:00:00Z").toEpochMilli());
    assertThat(series.kind(gap)).isEqualTo(CatchSeries.Kind.GAP_CATCH);
    String caught = String.format(Locale.ROOT, "%.3f mm  gap: the level rose", series.catchMm(gap));
    assertThat(why("2024-11-21T03:00", "--resolution", "0.01"))
        .contains(
            "creek      no reading\n",
            "2024-11-21T13:00:00-07:00 to 2024-11-21T14:00:00-07:00",
            "2024-11-20T19:50:00-07:00 to 2024-11-21T14:00:00-07:00  " + caught);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2024-10-01T00:00-07:00", "2025-04-15T15:30Z"})
  void aTimeOutsideTheRecordIsWrongUseAndNamesItsSpan(String at) throws IOException {
    var before = Copies.bytes(SEASON);
    Terminal run = Terminal.run("why", SEASON, "--at", at);
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("2024-10-15T08:10:00-07:00 to 2025-04-15T07:55:00-07:00");
    assertThat(Copies.bytes(SEASON)).isEqualTo(before);
  }

  @Test
  void aTimeThatIsNoneIsWrongUseAndShowsOne() {
    Terminal run = Terminal.run("why", SEASON, "--at", "noon");
    assertThat(run.code()).isEqualTo(ExitCode.WRONG_USE);
    assertThat(run.err()).contains("2025-01-15T10:00-07:00, not 'noon'");
  }
}
