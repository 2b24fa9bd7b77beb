package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.KeptSeason.noise;
import static org.rimebook.fixture.KeptSeason.remark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.season.Season;
import org.rimebook.station.InputException;

/** Two windows, or a window and another program, with one notebook. */
class SharedNotebookTest {

  @TempDir private Path folder;
  private KeptSeason mine;
  private KeptSeason other;

  @BeforeEach
  void openTwice() throws IOException {
    mine = KeptSeason.in(folder);
    mine.keeper().write(List.of(noise(0, 1)));
    other = mine.again();
  }

  private Notice notice() {
    return mine.workspace().notice().get();
  }

  @Test
  void entriesWrittenElsewhereMeanwhileAreTakenOverAndToldOf() throws IOException {
    other.keeper().write(List.of(remark("theirs")));
    assertThat(mine.keeper().write(List.of(remark("mine")))).isTrue();
    assertThat(mine.history()).extracting(e -> e.header().note()).endsWith("theirs", "mine");
    assertThat(mine.history()).extracting(e -> e.header().id()).doesNotHaveDuplicates();
    assertThat(Files.readAllLines(mine.notebook())).hasSize(3);
    assertThat(notice().weight()).isEqualTo(Notice.Weight.NOTE);
    assertThat(notice().words()).contains("1 entry was added there, kept and shown here");
  }

  @Test
  void aStepOfSomeoneElseIsNotUndoneUnseen() {
    other.keeper().write(List.of(remark("theirs")));
    mine.keeper().undo();
    assertThat(mine.inForce()).hasSize(2);
    assertThat(notice().weight()).isEqualTo(Notice.Weight.FAULT);
    mine.keeper().undo();
    assertThat(mine.inForce()).hasSize(1);
  }

  @Test
  void anEntryWithdrawnElsewhereIsNotChanged() {
    String id = mine.last();
    other.keeper().withdraw(List.of(id), "");
    assertThat(mine.keeper().replace(id, noise(0, 2))).isFalse();
    assertThat(mine.keeper().withdraw(List.of(id), "")).isFalse();
    assertThat(mine.inForce()).isEmpty();
    assertThat(notice().words()).contains("withdrawn or changed meanwhile");
  }

  @Test
  void entriesTakenOutOfTheFileAreToldOf() throws IOException {
    Files.writeString(mine.notebook(), "");
    assertThat(mine.keeper().write(List.of(remark("mine")))).isTrue();
    assertThat(notice().words()).contains("1 entry was no longer in it");
  }

  @Test
  void aFileThatCannotBeWrittenIsToldOfAndKeepsTheDraft() throws IOException {
    Files.delete(mine.notebook());
    Files.createDirectory(mine.notebook());
    mine.workspace().draft().set(java.util.Optional.of(remark("mine")));
    assertThat(mine.keeper().write(List.of(remark("mine")))).isFalse();
    assertThat(notice().weight()).isEqualTo(Notice.Weight.FAULT);
    assertThat(notice().words()).contains("can't be written to");
    assertThat(mine.workspace().draft().get()).isPresent();
  }

  @Test
  void theSeasonShownIsTheOneTheFolderGives() throws InputException, IOException {
    mine.byHand("scribble");
    mine.keeper().write(List.of(noise(0, 2)));
    Season shown = mine.workspace().opened().get().orElseThrow().season();
    Season fresh = Season.open(folder);
    assertThat(shown.notebook()).isEqualTo(fresh.notebook());
    assertThat(shown.digests()).isEqualTo(fresh.digests());
    assertThat(shown.notes()).isEqualTo(fresh.notes());
  }
}
