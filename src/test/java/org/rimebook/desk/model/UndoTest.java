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
import org.rimebook.notebook.Entry;

class UndoTest {

  @TempDir private Path folder;
  private KeptSeason season;
  private SeasonKeeper keeper;

  @BeforeEach
  void open() throws IOException {
    season = KeptSeason.in(folder);
    keeper = season.keeper();
  }

  private List<String> notes() {
    return season.inForce().stream().map(entry -> entry.header().note()).toList();
  }

  private static String handWritten(String id, String kind, String more) {
    return "{\"id\": \"%s\", \"at\": \"2025-02-01T09:00:00-07:00\", \"by\": \"cd\", \"kind\": \"%s\"%s}"
        .formatted(id, kind, more);
  }

  @Test
  void severalEntriesOfOneStepGoAndComeTogether() {
    keeper.write(List.of(remark("a")));
    keeper.write(List.of(remark("b"), remark("c")));
    keeper.undo();
    assertThat(notes()).containsExactly("a");
    keeper.redo();
    assertThat(notes()).containsExactly("a", "b", "c");
  }

  @Test
  void undoReachesBackOverARestart() {
    keeper.write(List.of(remark("a")));
    keeper.write(List.of(remark("b")));
    season = season.again();
    season.keeper().undo();
    season = season.again();
    season.keeper().undo();
    assertThat(notes()).isEmpty();
    season = season.again();
    season.keeper().redo();
    assertThat(notes()).containsExactly("a");
  }

  @Test
  void undoingAChangeTakesBackBothOfItsEntries() {
    keeper.write(List.of(noise(0, 1)));
    List<Entry> before = season.inForce();
    keeper.replace(season.last(), noise(0, 2));
    assertThat(season.inForce()).singleElement().extracting(Entry::span).isNotEqualTo(before);
    keeper.undo();
    assertThat(season.inForce()).isEqualTo(before);
    keeper.redo();
    assertThat(season.inForce()).singleElement().isEqualTo(season.history().get(2));
  }

  @Test
  void undoingAWithdrawalBringsTheEntryBack() {
    keeper.write(List.of(remark("a")));
    keeper.withdraw(List.of(season.last()), "wrong day");
    assertThat(notes()).isEmpty();
    keeper.undo();
    assertThat(notes()).containsExactly("a");
  }

  @Test
  void aNewStepEndsWhatCanBeDoneAgain() {
    keeper.write(List.of(remark("a")));
    keeper.undo();
    keeper.write(List.of(remark("b")));
    keeper.redo();
    assertThat(notes()).containsExactly("b");
  }

  @Test
  void undoAndRedoWithNothingToDoWriteNothing() {
    keeper.undo();
    keeper.redo();
    assertThat(season.notebook()).doesNotExist();
  }

  @Test
  void entriesWithNumbersAfterADotAreStepsOfTheirOwnWhenWrittenByHand() throws IOException {
    season.byHand(handWritten("2025.1", "remark", ", \"note\": \"a\""));
    season.byHand(handWritten("2025.2", "remark", ", \"note\": \"b\""));
    season = season.again();
    season.keeper().undo();
    assertThat(notes()).containsExactly("a");
  }

  @Test
  void aWithdrawalWrittenByHandIsAStepLikeAnyOther() throws IOException {
    season.byHand(handWritten("x", "remark", ", \"note\": \"a\""));
    season.byHand(handWritten("y", "withdrawal", ", \"entry\": \"x\""));
    season = season.again();
    season.keeper().undo();
    assertThat(notes()).containsExactly("a");
    season.keeper().redo();
    assertThat(notes()).isEmpty();
  }

  @Test
  void anEntryByHandThatIsNamedLikeAnUndoingIsntTakenForOne() throws IOException {
    keeper.write(List.of(remark("a")));
    season.byHand(handWritten("undo-later", "remark", ", \"note\": \"b\""));
    season = season.again();
    season.keeper().undo();
    assertThat(notes()).containsExactly("a");
    season.keeper().undo();
    assertThat(notes()).isEmpty();
  }

  @Test
  void aStepCutShortIsTakenBackAsFarAsItWent() throws IOException {
    keeper.write(List.of(remark("a"), remark("b")));
    keeper.undo();
    List<String> lines = Files.readAllLines(season.notebook());
    Files.write(season.notebook(), lines.subList(0, 3));
    season = season.again();
    assertThat(notes()).containsExactly("b");
    season.keeper().undo();
    assertThat(notes()).containsExactly("a", "b");
    season.keeper().undo();
    assertThat(notes()).isEmpty();
  }

  @Test
  void initialsWithADotKeepAStepTogether() {
    keeper.writer("a.b");
    keeper.write(List.of(remark("a"), remark("b")));
    keeper.undo();
    assertThat(notes()).isEmpty();
  }

  @Test
  void stepsOfOneSecondStayApart() {
    keeper.write(List.of(remark("a")));
    keeper.write(List.of(remark("b")));
    keeper.write(List.of(remark("c")));
    keeper.undo();
    keeper.undo();
    assertThat(notes()).containsExactly("a");
    keeper.redo();
    assertThat(notes()).containsExactly("a", "b");
  }
}
