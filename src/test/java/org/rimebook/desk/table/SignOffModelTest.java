package org.rimebook.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.SeasonHeadline;
import org.rimebook.desk.model.SignOffModel;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;
import org.rimebook.season.SignOffState;

class SignOffModelTest {

  @TempDir private Path folder;

  private static Bucket bucket() {
    return Bucket.every(15, 48).level(Bucket.rain(30, 34, 1)).noise(0.01);
  }

  private static Entry dry(String note) {
    return new Entry.DrySpell(new Entry.Header("", "", "", note), Bucket.span(5, 9));
  }

  private static SignOffState state(Desk desk) {
    return SignOffState.of(desk.workspace.opened().get().orElseThrow().season());
  }

  @Test
  void aSeasonInOneLineSaysItsCatchItsCompletenessAndThatNobodySigned() {
    SeasonHeadline line = SeasonHeadline.of(Desk.with(bucket(), folder).workspace);
    assertThat(line.total()).matches("4\\.0 mm ± 0\\.\\d+ mm · (99|100) % complete");
    assertThat(line.signOff()).isEqualTo("Not signed off");
  }

  @Test
  void hoursWithoutATotalAreCountedInTheLine() {
    Bucket late = bucket().entry(new Entry.LateCatch(Bucket.header("l"), Bucket.span(28, 31)));
    assertThat(SeasonHeadline.of(Desk.with(late, folder).workspace).total())
        .endsWith(" · 2 hours missing");
  }

  @Test
  void aSignOffStatesTheEntriesAndIsThatOfItsSigner() {
    Desk desk = Desk.with(bucket(), folder);
    desk.keeper.writer("rw");
    desk.keeper.write(List.of(dry("calm")));
    SignOffModel model = new SignOffModel(desk.workspace, desk.keeper);
    assertThat(model.initials()).isEqualTo("rw");
    assertThat(model.sign(" KH ", "as reviewed")).isTrue();
    assertThat(model.standing()).isEqualTo("Signed off 2026-03-02 by KH");
    assertThat(state(desk)).isEqualTo(SignOffState.CURRENT);
    assertThat(desk.keeper.writer()).isEqualTo("rw");
    assertThat(folder.resolve("notebook.jsonl")).content().contains("\"sign-off\"", "as reviewed");
  }

  @Test
  void whatChangesAfterwardsIsCounted() {
    Desk desk = Desk.with(bucket(), folder);
    SignOffModel model = new SignOffModel(desk.workspace, desk.keeper);
    assertThat(model.sign("KH", "")).isTrue();
    desk.keeper.write(List.of(dry("one"), dry("two")));
    assertThat(model.standing()).isEqualTo("Changed since sign-off of 2026-03-02 by KH: 2 entries");
    assertThat(state(desk)).isEqualTo(SignOffState.STALE);
    desk.keeper.undo();
    assertThat(model.standing()).isEqualTo("Signed off 2026-03-02 by KH");
  }

  @Test
  void nobodySignsForTotalsThatArentSettled() {
    Desk desk = Desk.with(bucket(), folder);
    SignOffModel model = new SignOffModel(desk.workspace, desk.keeper);
    desk.compute(bucket().result(), Computed.State.FORESEEN);
    assertThat(model.obstacle().orElseThrow()).startsWith("An entry is being made");
    desk.hold(Lane.SETTLE);
    desk.keeper.write(List.of(dry("calm")));
    assertThat(model.obstacle().orElseThrow()).contains("wait until they are settled");
    assertThat(model.sign("KH", "")).isFalse();
    assertThat(model.items()).isEmpty();
    desk.release();
    assertThat(model.obstacle()).isEmpty();
    assertThat(model.sign("  ", "")).as("without initials").isFalse();
    assertThat(model.items())
        .extracting(SignOffModel.Item::label)
        .contains("Total", "Hours", "Entries", "Record", "Station sheet");
  }

  @Test
  void withoutASeasonThereIsNothingToSign() {
    Desk desk = new Desk();
    assertThat(new SignOffModel(new Workspace(), desk.keeper).obstacle())
        .isEqualTo(Optional.of("Open a season first"));
    assertThat(SeasonHeadline.of(new Workspace())).isEqualTo(SeasonHeadline.NONE);
  }
}
