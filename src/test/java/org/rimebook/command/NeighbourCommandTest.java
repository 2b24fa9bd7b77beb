package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;

class NeighbourCommandTest {

  private static final Path SEASON = Path.of("sample-sets", "quiet-valley");

  @TempDir private static Path temp;
  private static Path daily;

  @BeforeAll
  static void makeTable() {
    Path out = temp.resolve("tables");
    Terminal run =
        Terminal.run("totals", SEASON, "--out", out, "--resolution", "0.01", "--no-report");
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    daily = out.resolve("daily.csv");
  }

  /** The season's own table, with the catch halved from one day on. */
  private static Path halvedAfter(int row) throws IOException {
    List<String> lines = Files.readString(daily).lines().toList();
    StringBuilder text = new StringBuilder(lines.get(0) + "\n");
    for (int i = 1; i < lines.size(); i++) {
      String[] fields = lines.get(i).split(",", -1);
      double mm = Double.parseDouble(fields[2]) * (i > row ? 0.5 : 1);
      fields[2] = String.valueOf(mm);
      text.append(String.join(",", fields)).append('\n');
    }
    Path file = temp.resolve("halved-" + row + ".csv");
    Files.writeString(file, text);
    return file;
  }

  @Test
  void aSeasonAgainstItselfHasTheRatioOneAndNoBreak() {
    Terminal run = Terminal.run("neighbour", SEASON, "--with", daily);
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    assertThat(run.out())
        .startsWith("Tallis Flat against ")
        .contains("182 days or runs of days", "ratio 1.000", "the double-mass curve doesn't break")
        .contains("2023-11     30", "2024-04     30");
  }

  @Test
  void aNeighbourThatLosesHalfOfItsCatchBreaksTheCurve() throws IOException {
    Terminal run = Terminal.run("neighbour", SEASON, "--with", halvedAfter(90), "--json");
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    JsonNode slope = new ObjectMapper().readTree(run.out()).get("slope");
    assertThat(slope.get("breaks").asBoolean()).isTrue();
    assertThat(slope.get("before").asDouble()).isBetween(0.95, 1.1);
    assertThat(slope.get("after").asDouble()).isBetween(1.9, 2.05);
    assertThat(slope.get("at").asText()).startsWith("2024-0");
  }

  @Test
  void theCurveIsWrittenAsTableAndFigureTheSameEachTime() throws IOException {
    Path out = temp.resolve("curve");
    Terminal.run("neighbour", SEASON, "--with", halvedAfter(90), "--out", out);
    assertThat(Files.readString(out.resolve("double-mass.csv")))
        .startsWith("end,own_mm,other_mm,own_sum_mm,other_sum_mm\n2023-11-02T00:00:00-08:00,")
        .hasLineCount(183);
    assertThat(Files.readString(out.resolve("double-mass.svg"))).contains("Neighbours");
    var first = Copies.bytes(out);
    Terminal.run("neighbour", SEASON, "--with", halvedAfter(90), "--out", out);
    assertThat(Copies.bytes(out)).isEqualTo(first);
  }

  @Test
  void aTableThatCantBeReadLeavesNothingBehind() throws IOException {
    Path cut = temp.resolve("cut.csv");
    Files.writeString(cut, Files.readString(daily).substring(0, 300));
    Path out = temp.resolve("none");
    Terminal run = Terminal.run("neighbour", SEASON, "--with", cut, "--out", out);
    assertThat(run.code()).isEqualTo(ExitCode.NOT_MADE);
    assertThat(run.err()).contains("cut.csv, line", "Export it again");
    assertThat(out).doesNotExist();
    assertThat(Terminal.run("neighbour", SEASON, "--with", temp.resolve("no.csv")).err())
        .contains("no.csv: can't be read");
  }

  @Test
  void daysThatStartAtAnotherHourAreNotCompared() throws IOException {
    Path shifted = temp.resolve("shifted.csv");
    Files.writeString(shifted, Files.readString(daily).replace("-08:00", "-07:00"));
    Terminal run = Terminal.run("neighbour", SEASON, "--with", shifted);
    assertThat(run.code()).isEqualTo(ExitCode.NOT_MADE);
    assertThat(run.out()).contains("no day is in all tables", "182 without a counterpart");
  }
}
