package org.rimebook.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.CompareModel;
import org.rimebook.desk.model.Notice;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.NotebookLog;
import org.rimebook.totals.Resolution;

class CompareModelTest {

  @TempDir private Path folder;
  private Desk desk;
  private CompareModel model;
  private Path other;

  @BeforeEach
  void writeTwoNotebooks() throws IOException {
    desk = Desk.with(Bucket.every(15, 72).level(Bucket.rain(30, 34, 1)).noise(0.01), folder);
    model = new CompareModel(desk.workspace, desk.keeper, desk);
    other = folder.resolve("theirs.jsonl");
    Entry.Header header = new Entry.Header("k1", "2026-02-01T09:00:00-07:00", "kh", "calm day");
    NotebookLog.append(
        other, List.of(new Entry.DrySpell(header, Bucket.span(25, 45))), Bucket.OFFSET);
  }

  private CompareModel.Comparison compared() {
    return model.comparison().get().orElseThrow();
  }

  @Test
  void entriesDaysAndSeasonsThatDifferStandSideBySide() {
    model.open(other);
    assertThat(compared().entries()).hasSize(1);
    assertThat(compared().days()).hasSize(1);
    assertThat(compared().mineWords()).startsWith("4.0 mm ± ");
    assertThat(compared().theirsWords()).startsWith("0.0 mm ± ");
  }

  @Test
  void anEntryTakenOverIsMineWithItsWriterInTheNoteAndNothingDiffersAnyMore() {
    desk.keeper.writer("rw");
    model.open(other);
    model.takeOver(compared().entries().get(0));
    Entry mine = desk.workspace.opened().get().orElseThrow().season().notebook().inForce().get(0);
    assertThat(mine.header().by()).isEqualTo("rw");
    assertThat(mine.header().note())
        .isEqualTo("calm day (taken over from kh, 2026-02-01T09:00:00-07:00)");
    assertThat(compared().entries()).isEmpty();
    assertThat(compared().days()).isEmpty();
  }

  @Test
  void anEntryThatDiffersTakesThePlaceOfMine() {
    desk.keeper.write(
        List.of(new Entry.LateCatch(new Entry.Header("", "", "", ""), Bucket.span(25, 45))));
    model.open(other);
    model.takeOver(compared().entries().get(0));
    assertThat(desk.workspace.opened().get().orElseThrow().season().notebook().inForce())
        .extracting(Entry::kind)
        .containsExactly(Entry.DrySpell.KIND);
  }

  @Test
  void anotherResolutionIsThatOfBoth() {
    model.open(other);
    desk.workspace.resolution().set(Resolution.HUNDREDTH);
    assertThat(compared().theirs().totals().resolution()).isEqualTo(Resolution.HUNDREDTH);
    assertThat(compared().theirsWords()).startsWith("0.01 mm ± 0.0");
  }

  @Test
  void aFileThatIsNoNotebookIsSaidAndComparesNothing() throws IOException {
    model.open(Files.writeString(folder.resolve("note.txt"), "not a notebook\n"));
    assertThat(desk.workspace.notice().get().weight()).isEqualTo(Notice.Weight.FAULT);
    assertThat(desk.workspace.notice().get().words()).contains("notebook.jsonl of the same season");
    assertThat(model.comparison().get()).isEmpty();
  }

  @Test
  void anotherSeasonEndsTheComparison() {
    model.open(other);
    Desk next = Desk.with(Bucket.every(60, 48), folder.resolve("next"));
    desk.workspace.opened().set(next.workspace.opened().get());
    assertThat(model.comparison().get()).isEmpty();
  }

  @Test
  void showingADaySelectsItAndGoesThere() {
    desk.workspace.view().reset(Bucket.span(0, 72 * 30));
    model.show(Bucket.span(24, 48));
    assertThat(desk.workspace.selection().get().intervals()).containsExactly(Bucket.span(24, 48));
    assertThat(desk.workspace.view().visible().get()).isEqualTo(Bucket.span(0, 72));
  }
}
