package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.season.Season;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;

class SeasonMakerTest {

  private static final Progress CALLED_OFF =
      new Progress() {
        @Override
        public void at(String stage, double share) {
          throw new AssertionError("went on: " + stage);
        }

        @Override
        public boolean cancelled() {
          return true;
        }
      };

  @TempDir Path folder;
  private Path file;
  private SeasonDraft draft;

  @BeforeEach
  void aSeasonEntered() throws Exception {
    file = LoggerFile.in(folder);
    draft = LoggerFile.entered(file).draft().get();
  }

  @Test
  void theFilesAreCopiedAndTheSeasonOpens() throws Exception {
    Path made = SeasonMaker.make(draft, Progress.NONE);
    assertThat(file).exists();
    assertThat(made.resolve("records/download.csv")).hasSameBinaryContentAs(file);
    Season season = Season.open(made);
    assertThat(season.record().size()).isEqualTo(60);
    assertThat(season.sheet().wires().get(1).calibrations().get(0).f0Hz()).isEqualTo(1000);
    assertThat(season.notes()).isEmpty();
  }

  @Test
  void whatIsNotKnownIsLeftNullAndNamedOnOpening() throws Exception {
    Path made =
        SeasonMaker.make(
            draft.with(StationField.UTC_OFFSET, "").with(0, WireField.B, "?"), Progress.NONE);
    assertThat(Files.readString(made.resolve("station.json")))
        .contains("\"utc_offset\": null", "\"b_cm_per_hz2\": null");
    assertThatThrownBy(() -> Season.open(made))
        .isInstanceOf(InputException.class)
        .hasMessageContainingAll("utc_offset is absent or null", "b_cm_per_hz2 is absent or null");
  }

  @Test
  void nothingThatIsThereIsReplaced() throws Exception {
    Path records = Files.createDirectories(draft.folder().resolve("records"));
    Path sheet = Files.writeString(draft.folder().resolve("station.json"), "mine");
    Path other = Files.writeString(records.resolve("download.csv"), "another record");
    assertThatThrownBy(() -> SeasonMaker.make(draft, Progress.NONE))
        .isInstanceOf(InputException.class)
        .hasMessageContainingAll(
            "station.json: is there already", "download.csv: is there already");
    assertThat(sheet).hasContent("mine");
    assertThat(other).hasContent("another record");
  }

  @Test
  void calledOffItLeavesNothingBehind() {
    SeasonDraft deep = draft.into(folder.resolve("winters/2024"));
    assertThatThrownBy(() -> SeasonMaker.make(deep, CALLED_OFF))
        .isInstanceOf(CancellationException.class);
    assertThat(folder.resolve("winters")).doesNotExist();
    assertThat(file).exists();
  }

  @Test
  void calledOffItLeavesAFolderThatWasThere() throws Exception {
    Path note = Files.writeString(Files.createDirectories(draft.folder()).resolve("n.txt"), "n");
    assertThatThrownBy(() -> SeasonMaker.make(draft, CALLED_OFF))
        .isInstanceOf(CancellationException.class);
    assertThat(Files.list(draft.folder())).containsExactly(note);
  }

  @Test
  void aPlaceThatIsAFileIsRefused() throws Exception {
    Files.writeString(draft.folder(), "a file");
    assertThatThrownBy(() -> SeasonMaker.make(draft, Progress.NONE))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("Choose another folder");
    assertThat(draft.folder()).hasContent("a file");
  }

  @Test
  void aSampleThatIsThereIsLeftAsItIs() throws Exception {
    SampleSeason sample = SampleSeason.ALL.get(0);
    Path there = Files.createDirectories(folder.resolve(sample.folderName()));
    Files.writeString(there.resolve("station.json"), "mine");
    assertThat(sample.write(folder, CALLED_OFF)).isEqualTo(there);
    assertThat(there.resolve("station.json")).hasContent("mine");
  }

  @Test
  void aSampleCalledOffLeavesNothingBehind() {
    Path samples = folder.resolve("samples");
    assertThatThrownBy(() -> SampleSeason.ALL.get(0).write(samples, CALLED_OFF))
        .isInstanceOf(CancellationException.class);
    assertThat(samples).isEmptyDirectory();
  }

  @Test
  void aSampleIsASeasonThatOpens() throws Exception {
    Path made = SampleSeason.ALL.get(0).write(folder.resolve("samples"), Progress.NONE);
    assertThat(Season.open(made).record().size()).isPositive();
    assertThat(Files.list(made.getParent())).containsExactly(made);
  }
}
