package org.rimebook.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.desk.page.MarkScene.LEFT;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import javax.swing.Action;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.model.MarkKind;
import org.rimebook.fixture.Bucket;
import org.rimebook.fixture.KeptSeason;

class MarkActionsTest {

  @TempDir private Path folder;
  private MarkScene scene;

  @BeforeEach
  void open() throws IOException {
    scene = new MarkScene(folder);
  }

  @Test
  void noTwoCommandsShareAKeyOrAName() {
    assertThat(scene.desk.actions().stream().map(a -> a.getValue(Action.ACCELERATOR_KEY)))
        .filteredOn(Objects::nonNull)
        .doesNotHaveDuplicates();
    assertThat(scene.desk.actions()).extracting(DeskAction::name).doesNotHaveDuplicates();
  }

  @Test
  void kindsCanBeStartedOnlyWithATimeSelectedButARemarkAlways() {
    assertThat(scene.action("Dry spell").isEnabled()).isFalse();
    assertThat(scene.action("Remark").isEnabled()).isTrue();
    scene.drag(scene.stack, 0.25, 1, LEFT);
    assertThat(scene.action("Dry spell").isEnabled()).isTrue();
  }

  @Test
  void aTimeIsSelectedAndItsEdgesAreMovedByKeysAlone() {
    scene.workspace.cursorMs().set(OptionalLong.of(Bucket.ms(1.03)));
    scene.act("Select a reading");
    assertThat(scene.selected()).containsExactly(scene.readings(1, 1));
    scene.act("End a reading later");
    scene.act("End a reading later");
    scene.act("Start a reading earlier");
    assertThat(scene.selected()).containsExactly(scene.readings(0.75, 1.5));
    scene.act("End a reading earlier");
    scene.act("Start a reading later");
    assertThat(scene.selected()).containsExactly(scene.readings(1, 1.25));
  }

  @Test
  void anEdgeOfAnEntryMovedByKeyOpensItsChange() {
    scene.season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    scene.marking.choose(scene.season.inForce().get(0));
    scene.act("End a reading later");
    assertThat(scene.marking.task().get()).isPresent();
    scene.marking.write();
    assertThat(scene.season.inForce().get(0).span().orElseThrow().toMs())
        .isEqualTo(scene.readings(0, 1).toMs());
  }

  @Test
  void givingUpDropsTheFormFirstAndThenTheSelection() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    scene.marking.start(MarkKind.DRY_SPELL);
    scene.act("Give up");
    assertThat(scene.marking.task().get()).isEmpty();
    assertThat(scene.selected()).hasSize(1);
    scene.act("Give up");
    assertThat(scene.selected()).isEmpty();
  }

  @Test
  void undoWaitsWhileWordsAreTyped() {
    scene.season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    scene.act("New remark");
    assertThat(scene.action("Undo").isEnabled()).isFalse();
    scene.act("Undo");
    assertThat(scene.season.inForce()).hasSize(1);
    assertThat(scene.marking.task().get()).isPresent();
    scene.marking.drop();
    assertThat(scene.action("Undo").isEnabled()).isTrue();
  }

  @Test
  void aRemarkAboutNoTimeNeedsNoSelection() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    scene.act("New remark");
    scene.marking.write();
    assertThat(scene.season.inForce())
        .singleElement()
        .satisfies(e -> assertThat(e.span()).isEmpty());
  }
}
