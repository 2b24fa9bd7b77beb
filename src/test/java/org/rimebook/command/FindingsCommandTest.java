package org.rimebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;

class FindingsCommandTest {

  private static final Path SEASON = Path.of("sample-sets", "hard-winter");
  private static final String GAP = "silence/2024-11-21T03:00:00Z/2024-11-21T21:00:00Z";

  private static JsonNode json(Path season) throws IOException {
    Terminal run = Terminal.run("findings", season, "--json");
    assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
    return new ObjectMapper().readTree(run.out());
  }

  private static JsonNode finding(JsonNode all, String id) {
    for (JsonNode finding : all.get("findings")) {
      if (finding.get("id").asText().equals(id)) {
        return finding;
      }
    }
    throw new AssertionError("no finding " + id + " in " + all);
  }

  @Test
  void eachFindingIsToldWithItsTimeReasonAndProposal() {
    Terminal run = Terminal.run("findings", SEASON);
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(run.out())
        .startsWith("Quern Hollow: ")
        .contains("2024-11-20T20:00:00-07:00 to 2024-11-21T14:00:00-07:00\n    no readings")
        .contains("No readings for 18 h. The level rose by 12.07 mm across it")
        .contains("proposes: bad-interval over 2024-11-20T20:00:00-07:00 to")
        .contains("id: " + GAP);
  }

  @Test
  void theJsonNamesTheEntryThatWouldSettleIt() throws IOException {
    JsonNode all = json(SEASON);
    assertThat(all.get("open").asInt()).isEqualTo(all.get("findings").size());
    JsonNode proposal = finding(all, GAP).get("proposal");
    assertThat(proposal.get("kind").asText()).isEqualTo("bad-interval");
    assertThat(proposal.get("from").asText()).isEqualTo("2024-11-20T20:00:00-07:00");
    assertThat(proposal.get("reason").asText()).isEqualTo("power");
  }

  @Test
  void whatIsProposedCanBePutIntoTheNotebookAndSettlesIt(@TempDir Path temp) throws IOException {
    Path season = Copies.of(SEASON, temp.resolve("season"));
    int before = json(season).get("open").asInt();
    String members = finding(json(season), GAP).get("proposal").toString().substring(1);
    String head = "{\"id\":\"n-1\",\"at\":\"2025-06-01T10:00:00-07:00\",\"by\":\"ab\",";
    Files.write(
        season.resolve("notebook.jsonl"),
        (head + members + "\n").getBytes(StandardCharsets.UTF_8),
        StandardOpenOption.APPEND);
    assertThat(json(season).get("open").asInt()).isEqualTo(before - 1);
  }

  @Test
  void aDismissedFindingIsNotRaisedAgain(@TempDir Path temp) throws IOException {
    Path season = Copies.of(SEASON, temp.resolve("season"));
    String line =
        "{\"id\":\"n-1\",\"at\":\"2025-06-01T10:00:00-07:00\",\"by\":\"ab\","
            + "\"kind\":\"dismissal\",\"finding\":\""
            + GAP
            + "\",\"note\":\"known\"}\n";
    Files.write(
        season.resolve("notebook.jsonl"),
        line.getBytes(StandardCharsets.UTF_8),
        StandardOpenOption.APPEND);
    assertThat(json(season).toString()).doesNotContain(GAP);
  }

  @Test
  void aSeasonThatCannotBeReadIsSaidSo(@TempDir Path empty) {
    Terminal run = Terminal.run("findings", empty);
    assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("station.json");
  }
}
