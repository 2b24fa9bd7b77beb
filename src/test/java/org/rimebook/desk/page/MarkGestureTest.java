package org.rimebook.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.desk.page.MarkScene.LEFT;
import static org.rimebook.desk.page.MarkScene.x;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.event.InputEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.MarkKind;
import org.rimebook.desk.model.Selection;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.Entry;

class MarkGestureTest {

  private static final int SHIFT = InputEvent.SHIFT_DOWN_MASK;

  @TempDir private Path folder;
  private MarkScene scene;

  @BeforeEach
  void open() throws IOException {
    scene = new MarkScene(folder);
  }

  private void drag(double fromHour, double toHour) {
    scene.drag(scene.stack, fromHour, toHour, LEFT);
  }

  @Test
  void aDragSelectsFromReadingToReadingInEitherDirection() {
    drag(0.3, 1.2);
    assertThat(scene.selected()).containsExactly(scene.readings(0.25, 1.25));
    drag(1.9, 1.6);
    assertThat(scene.selected()).containsExactly(scene.readings(1.5, 2));
  }

  @Test
  void withShiftAnotherIntervalIsSelected() {
    drag(0.25, 0.5);
    scene.drag(scene.stack, 1.05, 1.45, LEFT | SHIFT);
    assertThat(scene.selected()).containsExactly(scene.readings(0.25, 0.5), scene.readings(1, 1.5));
  }

  @Test
  void aClickClears() {
    drag(0.25, 0.5);
    scene.click(scene.stack, 1.5, 1);
    assertThat(scene.workspace.selection().get()).isEqualTo(Selection.NONE);
  }

  @Test
  void aClickOnAWireChoosesItAndAnotherLetsItGo() {
    drag(0.25, 0.5);
    scene.wireUnderPointer = 1;
    scene.click(scene.stack, 1.5, 1);
    assertThat(scene.workspace.selection().get().wires()).containsExactly("east");
    assertThat(scene.selected()).hasSize(1);
    scene.click(scene.stack, 1.5, 1);
    assertThat(scene.workspace.selection().get().wires()).isEmpty();
  }

  @Test
  void anEdgeOfOneOfSeveralIntervalsIsDragged() {
    drag(0.25, 0.5);
    scene.drag(scene.stack, 1, 1.5, LEFT | SHIFT);
    drag(1.5, 1.74);
    assertThat(scene.selected())
        .containsExactly(scene.readings(0.25, 0.5), scene.readings(1, 1.75));
    drag(0.25, 0.02);
    assertThat(scene.selected()).containsExactly(scene.readings(0, 0.5), scene.readings(1, 1.75));
  }

  @Test
  void anEdgeOfTheEntryChosenIsDraftedWhileDraggedAndWrittenWhenLetGo() {
    scene.season.keeper().write(List.of(KeptSeason.noise(0.5, 1)));
    scene.marking.choose(scene.season.inForce().get(0));
    scene.press(scene.stack, 1, 1.52, LEFT);
    assertThat(scene.workspace.draft().get()).isPresent();
    assertThat(scene.season.history()).hasSize(1);
    scene.release(scene.stack, 1.52, 0);
    assertThat(scene.season.inForce())
        .singleElement()
        .satisfies(
            e ->
                assertThat(e.span().orElseThrow().toMs())
                    .isEqualTo(scene.readings(0.5, 1.5).toMs()));
  }

  @Test
  void givenUpADragLeavesTheSelectionAsItWas() {
    drag(0.25, 0.5);
    scene.press(scene.stack, 1, 2, LEFT);
    scene.act("Give up");
    assertThat(scene.selected()).containsExactly(scene.readings(0.25, 0.5));
    scene.release(scene.stack, 2, 0);
    assertThat(scene.selected()).containsExactly(scene.readings(0.25, 0.5));
  }

  @Test
  void givenUpADragOfAnEntrysEdgeWritesNothing() {
    scene.season.keeper().write(List.of(KeptSeason.noise(0.5, 1)));
    scene.marking.choose(scene.season.inForce().get(0));
    scene.press(scene.stack, 0.5, 0.1, LEFT);
    scene.act("Give up");
    scene.release(scene.stack, 0.1, 0);
    assertThat(scene.season.history()).hasSize(1);
    assertThat(scene.workspace.draft().get()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        InputEvent.BUTTON2_DOWN_MASK,
        InputEvent.BUTTON1_DOWN_MASK | InputEvent.CTRL_DOWN_MASK,
        InputEvent.BUTTON1_DOWN_MASK | InputEvent.ALT_DOWN_MASK
      })
  void dragsWithOtherButtonsOrModifiersAreLeftToOthers(int modifiers) {
    scene.drag(scene.stack, 0.25, 1, modifiers);
    assertThat(scene.selected()).isEmpty();
  }

  @Test
  void whileAFormIsOpenADragMovesItAndAClickLeavesIt() {
    drag(0.25, 0.5);
    scene.marking.start(MarkKind.DRY_SPELL);
    drag(1, 1.5);
    assertThat(scene.workspace.draft().get().flatMap(Entry::span)).contains(scene.readings(1, 1.5));
    scene.click(scene.stack, 2, 1);
    assertThat(scene.marking.task().get()).isPresent();
    assertThat(scene.selected()).hasSize(1);
  }

  @Test
  void edgesAreDrawnOverTheStripsAndTheGraphicsLeftAsTheyWere() {
    drag(0.5, 1);
    BufferedImage image = new BufferedImage(1100, 300, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.RED);
    scene.desk.gesture().paint(graphics, scene.stack);
    assertThat(new Color(image.getRGB(x(0.5), 250))).isEqualTo(Look.accent());
    assertThat(new Color(image.getRGB(x(0.75), 250))).isEqualTo(Color.BLACK);
    assertThat(graphics.getColor()).isEqualTo(Color.RED);
    assertThat(graphics.getClip()).isNull();
    graphics.dispose();
  }
}
