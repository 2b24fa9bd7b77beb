package org.rimebook.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.desk.page.MarkScene.LEFT;
import static org.rimebook.desk.page.MarkScene.x;

import java.awt.Color;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.look.Look;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.Entry;

class EntryLaneTest {

  @TempDir private Path folder;
  private MarkScene scene;
  private EntryLane lane;

  @BeforeEach
  void write() throws IOException {
    scene = new MarkScene(folder);
    lane = scene.desk.lane();
    scene.season.keeper().write(List.of(KeptSeason.noise(0.5, 1.5)));
  }

  private long accented() {
    BufferedImage image = MarkScene.painted(lane);
    return IntStream.range(0, 30)
        .filter(y -> new Color(image.getRGB(x(1), y)).equals(Look.accent()))
        .count();
  }

  @Test
  void aClickChoosesAnEntryWhichIsThenOutlined() {
    assertThat(accented()).isZero();
    scene.click(lane, 1, 1);
    assertThat(scene.marking.chosen()).contains(scene.season.inForce().get(0));
    assertThat(scene.selected()).hasSize(1);
    assertThat(accented()).isPositive();
    scene.click(lane, 2, 1);
    assertThat(scene.marking.chosen()).isEmpty();
  }

  @Test
  void aDoubleClickOpensItsForm() {
    scene.click(lane, 1, 2);
    assertThat(scene.marking.task().get())
        .get()
        .satisfies(task -> assertThat(task.id()).isEqualTo(scene.season.last()));
    assertThat(scene.season.history()).hasSize(1);
  }

  @Test
  void anEdgeIsDraggedToTheNearestReading() {
    scene.press(lane, 1.5, 1.98, LEFT);
    assertThat(scene.workspace.draft().get().flatMap(Entry::span).orElseThrow().toMs())
        .isEqualTo(scene.readings(0, 2).toMs());
    scene.release(lane, 1.98, 0);
    assertThat(scene.season.inForce().get(0).span().orElseThrow().toMs())
        .isEqualTo(scene.readings(0, 2).toMs());
    assertThat(scene.season.history()).hasSize(3);
  }

  @Test
  void anEdgeClickedButNotMovedWritesNothing() {
    scene.click(lane, 1.5, 1);
    assertThat(scene.season.history()).hasSize(1);
    assertThat(scene.marking.chosen()).isPresent();
  }

  @Test
  void aHandThatShakesMovesNoEdge() {
    scene.drag(lane, 1.504, 1.508, LEFT);
    assertThat(scene.season.history()).hasSize(1);
    assertThat(scene.workspace.draft().get()).isEmpty();
  }

  @Test
  void aWithdrawnEntryIsNotThere() {
    BufferedImage with = MarkScene.painted(lane);
    scene.season.keeper().withdraw(List.of(scene.season.last()), "");
    BufferedImage without = MarkScene.painted(lane);
    assertThat(with.getRGB(x(1.25), 8)).isNotEqualTo(without.getRGB(x(1.25), 8));
    scene.click(lane, 1, 1);
    assertThat(scene.marking.chosen()).isEmpty();
  }

  @Test
  void theTipSaysAllThatTheSpanCannot() {
    MouseEvent over = new MouseEvent(lane, MouseEvent.MOUSE_MOVED, 0, 0, x(1), 10, 0, false);
    assertThat(lane.getToolTipText(over))
        .isEqualTo("Bad interval, 10 Jan 00:30 to 01:30, north, noise, rattles");
  }
}
