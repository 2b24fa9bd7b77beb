package org.rimebook.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.ExportModel;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.fixture.Bucket;
import org.rimebook.fixture.Copies;
import org.rimebook.fixture.Terminal;
import org.rimebook.notebook.Entry;
import org.rimebook.totals.Resolution;

class ExportModelTest {

  @TempDir private Path folder;
  private final Desk desk = new Desk();
  private final ExportModel model = new ExportModel(desk.workspace, desk);
  private Path season;

  @BeforeEach
  void openASeason() throws IOException {
    season = Copies.of(Path.of("sample-sets", "quiet-valley"), folder.resolve("season"));
    desk.keeper.open(season);
  }

  private void write() {
    desk.keeper.write(
        List.of(new Entry.DrySpell(new Entry.Header("", "", "", "calm"), Bucket.span(5, 9))));
  }

  private Path byCommand(Resolution resolution) {
    Path out = folder.resolve("command");
    Terminal run =
        Terminal.run(
            "totals", season, "--out", out, "--resolution", resolution.mm(), "--no-report");
    assertThat(run.code()).as(run.err()).isZero();
    return out;
  }

  @Test
  void theTablesAreThoseOfTheCommandLineByteForByte() throws IOException {
    Path out = folder.resolve("window");
    model.start(out, Resolution.TENTH);
    assertThat(Copies.bytes(out)).isEqualTo(Copies.bytes(byCommand(Resolution.TENTH)));
    assertThat(desk.workspace.notice().get())
        .isEqualTo(new Notice(Notice.Weight.NOTE, "The tables are written to " + out));
    assertThat(model.state().get()).isEqualTo(ExportModel.State.IDLE);
  }

  @Test
  void soAreTheyAfterAnEntryAndAtAnotherResolution() throws IOException {
    Path notebook = season.resolve("notebook.jsonl");
    Files.writeString(notebook, Files.readString(notebook) + "{\"id\": \"cut o");
    desk.keeper.open(season);
    write();
    Path out = folder.resolve("window");
    model.start(out, Resolution.HUNDREDTH);
    assertThat(Copies.bytes(out)).isEqualTo(Copies.bytes(byCommand(Resolution.HUNDREDTH)));
  }

  @Test
  void itWaitsUntilTotalsAreSettledAndTellsHowFarItIs() {
    List<String> stages = new ArrayList<>();
    model.state().watch(state -> stages.add(state.words()));
    desk.hold(Lane.SETTLE);
    write();
    Path out = folder.resolve("window");
    model.start(out, Resolution.TENTH);
    assertThat(out).doesNotExist();
    assertThat(stages).containsExactly("Waiting until the totals are settled");
    desk.release();
    assertThat(out.resolve("daily.csv")).exists();
    assertThat(stages).contains("Writing the tables", "tables", "files").endsWith("");
  }

  @Test
  void onceGivenUpNothingIsWritten() {
    desk.hold(Lane.SETTLE);
    write();
    Path out = folder.resolve("window");
    model.start(out, Resolution.TENTH);
    model.cancel();
    write();
    desk.release();
    assertThat(out).doesNotExist();
    assertThat(desk.cancelled).contains(Lane.EXPORT);
  }

  @Test
  void tablesDontGoAmongTheRecordAndAFolderThatIsntOneIsSaid() throws IOException {
    assertThat(model.obstacle(season.resolve("records")).orElseThrow())
        .contains("would be read as such");
    assertThat(model.obstacle(model.suggestedFolder())).isEmpty();
    Path file = Files.writeString(folder.resolve("file"), "");
    model.start(file, Resolution.TENTH);
    assertThat(desk.workspace.notice().get().weight()).isEqualTo(Notice.Weight.FAULT);
    assertThat(desk.workspace.notice().get().words())
        .contains("can't be written to", "nothing was left half-written");
  }
}
