package org.rimebook.desk.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.look.Theme;
import org.rimebook.desk.model.Computed;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;

class PanelsTest {

  private static final Path NOWHERE = Path.of("nowhere");

  @BeforeAll
  static void dress() throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(() -> Theme.install(Theme.LIGHT));
  }

  private static void onTheEventThread(Runnable deed)
      throws InterruptedException, InvocationTargetException {
    SwingUtilities.invokeAndWait(deed);
  }

  private static Bucket bucket() {
    return Bucket.every(15, 400).level(Bucket.rain(230, 240, 1)).noise(0.01);
  }

  private static <T extends Component> List<T> all(Class<T> type, Container within) {
    List<T> found = new ArrayList<>();
    for (Component part : within.getComponents()) {
      if (type.isInstance(part)) {
        found.add(type.cast(part));
      }
      if (part instanceof Container container) {
        found.addAll(all(type, container));
      }
    }
    return found;
  }

  private static BufferedImage paint(JComponent panel) {
    panel.setSize(900, 300);
    layOut(panel);
    layOut(panel);
    BufferedImage image = new BufferedImage(900, 300, BufferedImage.TYPE_INT_RGB);
    panel.paint(image.createGraphics());
    return image;
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }

  private static void layOut(Container container) {
    container.doLayout();
    for (Component part : container.getComponents()) {
      if (part instanceof Container inner) {
        layOut(inner);
      }
    }
  }

  private static void act(TotalsTable table, String name) {
    table.actions().stream()
        .filter(action -> action.name().equals(name))
        .findFirst()
        .orElseThrow()
        .actionPerformed(null);
  }

  @Test
  void selectionIsSharedBothWays() throws InterruptedException, InvocationTargetException {
    onTheEventThread(
        () -> {
          Desk desk = Desk.with(bucket(), NOWHERE);
          TotalsTable panel = new TotalsTable(desk.workspace);
          act(panel, "Hourly totals");
          JTable table = all(JTable.class, panel).get(0);
          table.setRowSelectionInterval(230, 239);
          assertThat(desk.workspace.selection().get().intervals())
              .containsExactly(Bucket.span(230, 240));
          desk.workspace
              .selection()
              .set(desk.workspace.selection().get().only(Bucket.span(10, 12)));
          assertThat(table.getSelectedRows()).containsExactly(10, 11);
          act(panel, "Why this total");
          assertThat(desk.workspace.asked().get()).isPresent();
        });
  }

  @Test
  void sortingKeepsWhatIsSelected() throws InterruptedException, InvocationTargetException {
    onTheEventThread(
        () -> {
          Desk desk = Desk.with(bucket(), NOWHERE);
          TotalsTable panel = new TotalsTable(desk.workspace);
          act(panel, "Hourly totals");
          JTable table = all(JTable.class, panel).get(0);
          table.setRowSelectionInterval(10, 11);
          table.getRowSorter().toggleSortOrder(0);
          assertThat(desk.workspace.selection().get().intervals())
              .containsExactly(Bucket.span(10, 12));
          int last = table.getRowCount() - 1;
          assertThat(table.getSelectedRows()).containsExactly(last - 11, last - 10);
        });
  }

  @Test
  void itsColumnsFollowTheScale() throws InterruptedException, InvocationTargetException {
    onTheEventThread(
        () -> {
          JTable table =
              all(JTable.class, new TotalsTable(Desk.with(bucket(), NOWHERE).workspace)).get(0);
          int before = table.getColumnModel().getColumn(0).getWidth();
          Font font = UIManager.getFont("defaultFont");
          UIManager.put("defaultFont", font.deriveFont(2 * font.getSize2D()));
          try {
            SwingUtilities.updateComponentTreeUI(table);
            assertThat(table.getColumnModel().getColumn(0).getWidth()).isGreaterThan(before);
          } finally {
            UIManager.put("defaultFont", null);
          }
          SwingUtilities.updateComponentTreeUI(table);
          assertThat(table.getColumnModel().getColumn(0).getWidth()).isEqualTo(before);
        });
  }

  @Test
  void whileAnEdgeIsDraggedNothingScrollsAndTheSelectionStays()
      throws InterruptedException, InvocationTargetException {
    onTheEventThread(
        () -> {
          Desk desk = Desk.with(bucket(), NOWHERE);
          TotalsTable panel = new TotalsTable(desk.workspace);
          act(panel, "Hourly totals");
          JTable table = all(JTable.class, panel).get(0);
          paint(panel);
          desk.workspace
              .selection()
              .set(desk.workspace.selection().get().only(Bucket.span(232, 234)));
          BufferedImage before = paint(panel);
          final int y = -table.getY();
          final Object column = table.getColumnModel().getColumn(0);
          assertThat(y).isPositive();
          Bucket drafted =
              bucket().entry(new Entry.DrySpell(Bucket.header("d"), Bucket.span(228, 242)));
          desk.compute(drafted.result(), Computed.State.FORESEEN);
          BufferedImage after = paint(panel);
          assertThat(-table.getY()).isEqualTo(y);
          assertThat(table.getSelectedRows()).containsExactly(232, 233);
          assertThat(table.getColumnModel().getColumn(0)).isSameAs(column);
          assertThat(pixels(after)).as("the rows that change").isNotEqualTo(pixels(before));
        });
  }

  @Test
  void aTotalAskedAboutIsExplainedAndClosedAgain()
      throws InterruptedException, InvocationTargetException {
    onTheEventThread(
        () -> {
          Desk desk = Desk.with(bucket(), NOWHERE);
          WhyPanel panel = new WhyPanel(desk.workspace, desk, finding -> {});
          desk.workspace.asked().set(Optional.of(Bucket.span(231, 232)));
          paint(panel);
          assertThat(words(panel)).contains("quality", "good", "w1").contains("none touches it");
          panel.getActionMap().get("close").actionPerformed(null);
          assertThat(words(panel)).contains("press W on it");
        });
  }

  @Test
  void aNarrowExplanationWrapsItsTimes() throws InterruptedException, InvocationTargetException {
    onTheEventThread(
        () -> {
          Link link = Link.to("2024-10-18 11:40 to 2024-10-19 08:00", "there", () -> {});
          Dimension whole = link.getPreferredSize();
          link.setSize(whole.width, whole.height);
          assertThat(link.getPreferredSize()).isEqualTo(whole);
          link.setSize(whole.width * 2 / 3, whole.height);
          assertThat(link.getPreferredSize().height).isBetween(whole.height + 8, whole.height * 2);
        });
  }

  @Test
  void figuresStandInAColumnOnlyWhereThereIsRoom()
      throws InterruptedException, InvocationTargetException {
    onTheEventThread(
        () -> {
          Desk desk = Desk.with(bucket(), NOWHERE);
          WhyPanel panel = new WhyPanel(desk.workspace, desk, finding -> {});
          desk.workspace.asked().set(Optional.of(Bucket.span(231, 232)));
          paint(panel);
          assertThat(all(TabularLabel.class, panel)).isNotEmpty();
          panel.setSize(300, 300);
          layOut(panel);
          assertThat(all(TabularLabel.class, panel)).isEmpty();
        });
  }

  private static String words(Container panel) {
    StringBuilder words = new StringBuilder();
    all(JTextArea.class, panel).forEach(area -> words.append(area.getText()).append('\n'));
    all(JLabel.class, panel).forEach(label -> words.append(label.getText()));
    return words.toString();
  }

  @Test
  void everyCommandSaysWhatItIsCalled() {
    Desk desk = Desk.with(bucket(), NOWHERE);
    List<DeskAction> actions = new ArrayList<>(new TotalsTable(desk.workspace).actions());
    actions.addAll(new ComparePanel(desk.workspace, desk.keeper, desk).actions());
    actions.addAll(new SeasonDialogs(desk.workspace, desk.keeper, desk, () -> null).actions());
    assertThat(actions).extracting(DeskAction::name).doesNotHaveDuplicates().doesNotContain("");
    assertThat(actions).extracting(a -> a.getValue("MnemonicKey")).doesNotContainNull();
  }
}
