package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.span;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.EdgeDrag.Edge;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

class MarkingTest {

  @TempDir private Path folder;
  private KeptSeason season;
  private Workspace workspace;
  private Marking marking;

  @BeforeEach
  void open() throws IOException {
    season = KeptSeason.in(folder);
    workspace = season.workspace();
    marking = new Marking(workspace, season.keeper());
  }

  private void select(Interval... intervals) {
    workspace.selection().set(new Selection(List.of(intervals), Set.of(), ""));
  }

  @Test
  void theDraftFollowsWhatIsSelectedAndChosenBeforeAnythingIsWritten() {
    select(span(0, 1));
    marking.start(MarkKind.BAD_INTERVAL);
    select(span(0, 2));
    workspace.selection().set(workspace.selection().get().toggled("north"));
    assertThat(workspace.draft().get())
        .get()
        .isInstanceOfSatisfying(
            Entry.BadInterval.class,
            bad -> {
              assertThat(bad.interval()).isEqualTo(span(0, 2));
              assertThat(bad.wires()).containsExactly("north");
            });
    assertThat(season.history()).isEmpty();
  }

  @Test
  void everyIntervalGetsAnEntryAndAllAreOneStep() {
    select(span(0, 0.5), span(1, 1.5), span(2, 2.25));
    marking.start(MarkKind.DRY_SPELL);
    assertThat(workspace.furtherDrafts().get()).hasSize(2);
    marking.task().get().orElseThrow().form().type(MarkForm.Field.NOTE, "clear");
    assertThat(marking.write()).isTrue();
    assertThat(season.inForce()).hasSize(3).allMatch(e -> e.header().note().equals("clear"));
    assertThat(workspace.draft().get()).isEmpty();
    assertThat(workspace.furtherDrafts().get()).isEmpty();
    marking.undo();
    assertThat(season.inForce()).isEmpty();
  }

  @Test
  void allWiresChosenMeansTheSameAsNone() {
    workspace
        .selection()
        .set(new Selection(List.of(span(0, 1)), Set.of("north", "east", "west"), ""));
    marking.start(MarkKind.BAD_INTERVAL);
    marking.write();
    assertThat(((Entry.BadInterval) season.inForce().get(0)).wires()).isEmpty();
  }

  @Test
  void anIncompleteFormIsNotWrittenAndStays() {
    select(span(0, 1));
    marking.start(MarkKind.ESTIMATE);
    assertThat(marking.write()).isFalse();
    assertThat(marking.task().get()).isPresent();
    assertThat(season.notebook()).doesNotExist();
  }

  @Test
  void droppingAFormLeavesNothingBehind() {
    select(span(0, 1));
    marking.start(MarkKind.LATE_CATCH);
    marking.drop();
    assertThat(workspace.draft().get()).isEmpty();
    assertThat(marking.task().get()).isEmpty();
    assertThat(season.notebook()).doesNotExist();
  }

  @Test
  void aChangeIsAWithdrawalAndANewEntryOfOneStep() {
    season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    marking.change(season.inForce().get(0));
    assertThat(workspace.selection().get().wires()).containsExactly("north");
    marking.task().get().orElseThrow().form().type(MarkForm.Field.NOTE, "hums");
    marking.changed();
    assertThat(workspace.draft().get()).map(e -> e.header().note()).contains("hums");
    assertThat(marking.write()).isTrue();
    assertThat(season.history()).hasSize(3);
    assertThat(season.inForce())
        .singleElement()
        .extracting(e -> e.header().note())
        .isEqualTo("hums");
    assertThat(marking.chosen()).contains(season.inForce().get(0));
  }

  @Test
  void aChangeThatChangesNothingWritesNothing() {
    season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    marking.change(season.inForce().get(0));
    assertThat(marking.write()).isTrue();
    assertThat(marking.task().get()).isEmpty();
    assertThat(season.history()).hasSize(1);
  }

  @Test
  void choosingAnotherEntryWhileOneIsChangedLeavesItsSpan() {
    season.keeper().write(List.of(KeptSeason.noise(0, 1), KeptSeason.noise(1, 2)));
    marking.change(season.inForce().get(0));
    marking.choose(season.inForce().get(1));
    assertThat(marking.task().get().orElseThrow().spans()).containsExactly(span(0, 1));
  }

  @Test
  void aFormThatCannotBeWrittenKeepsWhatWasTyped() throws IOException {
    select(span(0, 1));
    marking.start(MarkKind.REMARK);
    marking.task().get().orElseThrow().form().type(MarkForm.Field.NOTE, "long words");
    Files.createDirectory(season.notebook());
    assertThat(marking.write()).isFalse();
    assertThat(marking.task().get().orElseThrow().form().text(MarkForm.Field.NOTE))
        .isEqualTo("long words");
  }

  @Test
  void whatSomebodyElseWroteIsUndoneOnlyWhenAskedForTwice() {
    season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    season.keeper().writer("cd");
    marking.undo();
    assertThat(season.inForce()).hasSize(1);
    assertThat(marking.workspace().notice().get().words()).contains("isn't yours", "once more");
    marking.undo();
    assertThat(season.inForce()).isEmpty();
    assertThat(marking.workspace().notice().get().words()).startsWith("Undone: bad interval");
  }

  @Test
  void whoeverIsUnknownIsAskedBeforeUndo() {
    season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    season.keeper().writer("");
    marking.undo();
    assertThat(season.inForce()).hasSize(1);
    marking.task().get().orElseThrow().form().type(MarkForm.Field.INITIALS, "cd");
    marking.write();
    assertThat(season.keeper().writer()).isEqualTo("cd");
    marking.undo();
    assertThat(season.inForce()).isEmpty();
  }

  @Test
  void aWithdrawalKeepsItsReason() {
    season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    marking.askWithdrawal(season.inForce().get(0));
    marking.task().get().orElseThrow().form().type(MarkForm.Field.NOTE, "wrong day");
    marking.write();
    assertThat(season.inForce()).isEmpty();
    assertThat(season.history().get(1).header().note()).isEqualTo("wrong day");
  }

  @Test
  void anEdgeDraggedIsDraftedSnappedAndWrittenOnce() {
    season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    EdgeDrag drag = new EdgeDrag(marking);
    drag.grip(season.inForce().get(0), Edge.END);
    drag.to(ms(1.3));
    drag.to(ms(1.55));
    assertThat(workspace.draft().get().flatMap(Entry::span))
        .contains(new Interval(ms(0), ms(1.5) + 1000));
    assertThat(season.history()).hasSize(1);
    drag.release();
    assertThat(season.history()).hasSize(3);
    assertThat(season.inForce().get(0).span()).contains(new Interval(ms(0), ms(1.5) + 1000));
    assertThat(workspace.selection().get().entry()).isEqualTo(season.last());
  }

  @Test
  void anEdgeGivenUpLeavesTheEntryAndTheSelection() {
    season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    EdgeDrag drag = new EdgeDrag(marking);
    drag.grip(season.inForce().get(0), Edge.START);
    drag.to(ms(0.5));
    drag.giveUp();
    assertThat(workspace.draft().get()).isEqualTo(Optional.empty());
    assertThat(workspace.selection().get().intervals()).containsExactly(span(0, 1));
    drag.release();
    assertThat(season.history()).hasSize(1);
  }
}
