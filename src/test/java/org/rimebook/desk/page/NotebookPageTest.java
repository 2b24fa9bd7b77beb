package org.rimebook.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.desk.page.MarkScene.inside;
import static org.rimebook.fixture.KeptSeason.noise;
import static org.rimebook.fixture.KeptSeason.remark;

import java.awt.Component;
import java.awt.Container;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.Action;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import javax.swing.text.Position;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.NotebookRow;

class NotebookPageTest {

  @TempDir private Path folder;
  private MarkScene scene;
  private NotebookPage page;
  private JList<?> list;

  @BeforeEach
  void write() throws IOException {
    scene = new MarkScene(folder);
    page = scene.desk.page();
    list = inside(page, JList.class).findFirst().orElseThrow();
    list.setSize(300, 600);
    scene.season.keeper().write(List.of(noise(0, 1), remark("snow on the rim")));
  }

  private int lines() {
    int lines = 0;
    for (int i = 0; i < list.getModel().getSize(); i++) {
      lines += list.getModel().getElementAt(i) instanceof NotebookRow.Line ? 1 : 0;
    }
    return lines;
  }

  private int height(int row) {
    return cell(list, row).getPreferredSize().height;
  }

  private static <T> Component cell(JList<T> of, int row) {
    ListCellRenderer<? super T> renderer = of.getCellRenderer();
    return renderer.getListCellRendererComponent(
        of, of.getModel().getElementAt(row), row, false, false);
  }

  @Test
  void choosingAnEntryGoesThere() {
    list.setSelectedIndex(1);
    assertThat(scene.marking.chosen()).contains(scene.season.inForce().get(0));
    assertThat(scene.workspace.view().canGoBack()).isTrue();
    assertThat(scene.workspace.view().visible().get())
        .satisfies(v -> assertThat(v.fromMs()).isLessThan(scene.readings(0, 1).fromMs()));
  }

  @Test
  void aLetterTypedOverTheListChoosesNoRow() {
    String first = String.valueOf(list.getModel().getElementAt(1));
    for (int row = 0; row < list.getModel().getSize(); row++) {
      assertThat(list.getNextMatch(first.substring(0, 1), row, Position.Bias.Forward)).isNegative();
    }
  }

  @Test
  void anEntryJustWrittenStaysInViewWhenItsWordsWrap()
      throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(
        () -> {
          page.setSize(420, 300);
          layOut(page);
          for (int day = 0; day < 12; day++) {
            String note = "snow on the rim and rime on the shield, brushed off on day " + day;
            scene.season.keeper().write(List.of(remark(note)));
          }
          scene.marking.choose(scene.season.inForce().get(scene.season.inForce().size() - 1));
          layOut(page);
        });
    SwingUtilities.invokeAndWait(
        () -> {
          page.setSize(180, 300);
          layOut(page);
        });
    SwingUtilities.invokeAndWait(() -> layOut(page));
    SwingUtilities.invokeAndWait(
        () -> {
          int chosen = list.getSelectedIndex();
          assertThat(chosen).isPositive();
          assertThat(list.getVisibleRect().contains(list.getCellBounds(chosen, chosen))).isTrue();
        });
  }

  private static void layOut(Container container) {
    container.doLayout();
    for (Component part : container.getComponents()) {
      if (part instanceof Container inner) {
        layOut(inner);
      }
    }
  }

  @Test
  void anEntryChosenElsewhereIsChosenHere() {
    scene.marking.choose(scene.season.inForce().get(1));
    assertThat(page.entryChosen()).contains(scene.season.inForce().get(1));
  }

  @Test
  void wordsAndKindsNarrowTheList() {
    assertThat(lines()).isEqualTo(2);
    JTextField find = inside(page, JTextField.class).findFirst().orElseThrow();
    find.setText("RIM");
    assertThat(lines()).isEqualTo(1);
    find.setText("");
    inside(page, JComboBox.class).findFirst().orElseThrow().setSelectedItem("Bad interval");
    assertThat(lines()).isEqualTo(1);
  }

  @Test
  void withdrawnEntriesShowOnDemand() {
    scene.season.keeper().withdraw(List.of(scene.season.last()), "");
    assertThat(lines()).isEqualTo(1);
    scene.act("Withdrawn entries");
    assertThat(lines()).isEqualTo(2);
  }

  @Test
  void enterChangesAndDeleteWithdrawsTheEntryChosen() {
    list.setSelectedIndex(1);
    Object enter = list.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke("ENTER"));
    list.getActionMap().get(enter).actionPerformed(null);
    assertThat(scene.marking.task().get().orElseThrow().id())
        .isEqualTo(scene.season.inForce().get(0).header().id());
    scene.act("Withdraw entry");
    scene.marking.write();
    assertThat(scene.season.inForce()).hasSize(1);
  }

  @Test
  void theHistoryOpensUnderItsEntry() {
    list.setSelectedIndex(1);
    int before = height(1);
    scene.act("History of entry");
    assertThat(height(1)).isGreaterThan(before);
    scene.act("History of entry");
    assertThat(height(1)).isEqualTo(before);
  }

  @Test
  void anEmptyPageSaysWhatGoesThere() {
    BufferedImage full = MarkScene.painted(list);
    scene.season.keeper().undo();
    BufferedImage empty = MarkScene.painted(list);
    assertThat(inked(empty)).isPositive().isNotEqualTo(inked(full));
  }

  private static long inked(BufferedImage image) {
    int ground = image.getRGB(1, image.getHeight() - 2);
    long inked = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        inked += image.getRGB(x, y) == ground ? 0 : 1;
      }
    }
    return inked;
  }

  @Test
  void undoAndRedoSayWhatTheyDo() {
    assertThat(scene.action("Undo").getValue(Action.SHORT_DESCRIPTION))
        .isEqualTo("Takes back: bad interval and 1 more");
    assertThat(scene.action("Redo").isEnabled()).isFalse();
    scene.act("Undo");
    assertThat(scene.season.inForce()).isEmpty();
    assertThat(scene.action("Redo").description()).isEqualTo("Does again: bad interval and 1 more");
    scene.act("Redo");
    assertThat(scene.season.inForce()).hasSize(2);
  }
}
