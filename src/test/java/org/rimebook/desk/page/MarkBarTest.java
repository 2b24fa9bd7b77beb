package org.rimebook.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.desk.page.MarkScene.LEFT;
import static org.rimebook.desk.page.MarkScene.inside;

import java.awt.Font;
import java.awt.Insets;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.MarkKind;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class MarkBarTest {

  @TempDir private Path folder;
  private MarkScene scene;
  private MarkBar bar;

  @BeforeEach
  void open() throws IOException {
    scene = new MarkScene(folder);
    bar = scene.desk.bar();
  }

  private JTextField field(String name) {
    return inside(bar, JTextField.class)
        .filter(f -> name.equals(f.getName()))
        .findFirst()
        .orElseThrow();
  }

  private String words() {
    return inside(bar, JTextComponent.class)
        .filter(t -> !t.isEditable())
        .map(JTextComponent::getText)
        .reduce("", String::concat);
  }

  private String title() {
    return inside(bar, JLabel.class).findFirst().orElseThrow().getText();
  }

  private JButton button(String name) {
    return inside(bar, JButton.class)
        .filter(b -> b.getAccessibleContext().getAccessibleName().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private void enter() {
    KeyStroke enter = KeyStroke.getKeyStroke("ENTER");
    Object name = bar.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(enter);
    bar.getActionMap().get(name).actionPerformed(null);
  }

  @Test
  void itIsThereOnlyWhileSomethingIsSelected() {
    assertThat(bar.isVisible()).isFalse();
    scene.drag(scene.stack, 0.25, 1, LEFT);
    assertThat(bar.isVisible()).isTrue();
    assertThat(title()).isEqualTo("10 Jan 00:15 to 01:00 (45 min)");
    scene.act("Give up");
    assertThat(bar.isVisible()).isFalse();
  }

  @Test
  void itOffersEveryKindWithItsKey() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    for (MarkKind kind : MarkKind.values()) {
      JButton button = button(kind.words());
      assertThat(button.getIcon()).isInstanceOf(KeyName.class).hasToString("" + kind.key());
      assertThat(button.getToolTipText()).endsWith("(" + kind.key() + ")");
    }
    button("Late catch").doClick();
    assertThat(scene.workspace.draft().get()).get().isInstanceOf(Entry.LateCatch.class);
  }

  @Test
  void wiresAreChosenInTheBarAsOnTheStrips() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    inside(bar, JCheckBox.class)
        .filter(b -> b.getText().equals("west"))
        .forEach(JCheckBox::doClick);
    assertThat(scene.workspace.selection().get().wires()).containsExactly("west");
    scene.workspace.selection().set(scene.workspace.selection().get().toggled("east"));
    assertThat(inside(bar, JCheckBox.class).filter(JCheckBox::isSelected).map(JCheckBox::getText))
        .containsExactly("east", "west");
  }

  @Test
  void whatIsTypedIsCheckedInWordsAndEnterWritesOnlyWhatIsWhole() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    scene.act("Estimate");
    field("TOTAL").setText("six");
    assertThat(words()).contains("Total [mm]: millimetres, 0 or more");
    enter();
    assertThat(scene.season.history()).isEmpty();
    field("TOTAL").setText("6,4");
    field("SOURCE").setText("snow board");
    assertThat(words()).isEmpty();
    enter();
    assertThat(scene.season.inForce())
        .singleElement()
        .isInstanceOfSatisfying(Entry.Estimate.class, e -> assertThat(e.totalMm()).isEqualTo(6.4));
    assertThat(title()).startsWith("Estimate, 10 Jan 00:15");
  }

  @Test
  void theReasonChosenFollowsIntoTheDraft() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    scene.act("Bad interval");
    inside(bar, JComboBox.class).findFirst().orElseThrow().setSelectedItem(BadReason.POWER);
    assertThat(scene.workspace.draft().get())
        .get()
        .isInstanceOfSatisfying(
            Entry.BadInterval.class, b -> assertThat(b.reason()).isEqualTo(BadReason.POWER));
  }

  @Test
  void itsTitleAndEdgeFollowTheThemeAndTheScale() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    JLabel title = inside(bar, JLabel.class).findFirst().orElseThrow();
    JScrollPane scroll = inside(bar, JScrollPane.class).findFirst().orElseThrow();
    Font before = title.getFont();
    UIManager.put("defaultFont", before.deriveFont(Font.PLAIN, 26f));
    try {
      SwingUtilities.updateComponentTreeUI(bar);
      assertThat(title.getFont().getSize()).isEqualTo(26);
      assertThat(title.getFont().isBold()).isTrue();
      assertThat(scroll.getInsets()).isEqualTo(new Insets(0, 0, 0, 0));
    } finally {
      UIManager.put("defaultFont", null);
      SwingUtilities.updateComponentTreeUI(bar);
    }
    assertThat(title.getFont()).isEqualTo(before);
  }

  @Test
  void pouringAntifreezeBringsItsCaution() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    scene.act("Service visit");
    field("ANTIFREEZE").setText("2.4");
    assertThat(words()).contains("toxic");
  }

  @Test
  void initialsAreAskedForOnce() {
    scene.season.keeper().writer("");
    scene.drag(scene.stack, 0.25, 1, LEFT);
    scene.act("Dry spell");
    enter();
    assertThat(scene.season.history()).isEmpty();
    field("INITIALS").setText("cd");
    enter();
    assertThat(scene.season.inForce()).singleElement().satisfies(this::signed);
    scene.act("Dry spell");
    assertThat(inside(bar, JTextField.class))
        .extracting(JTextField::getName)
        .containsExactly("NOTE");
  }

  private void signed(Entry entry) {
    assertThat(entry.header().by()).isEqualTo("cd");
  }

  @Test
  void anEntryChosenCanBeWithdrawnWithAReason() {
    scene.season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    scene.marking.choose(scene.season.inForce().get(0));
    button("Withdraw").doClick();
    assertThat(title()).startsWith("Withdrawal of bad interval");
    field("NOTE").setText("wrong wire");
    enter();
    assertThat(scene.season.inForce()).isEmpty();
  }

  @Test
  void everyControlHasANameForAScreenReader() {
    scene.drag(scene.stack, 0.25, 1, LEFT);
    for (MarkKind kind : MarkKind.values()) {
      scene.marking.start(kind);
      assertThat(inside(bar, JComponent.class).filter(JComponent::isFocusable))
          .filteredOn(c -> c instanceof JTextField || c instanceof JComboBox)
          .isNotEmpty()
          .allSatisfy(c -> assertThat(c.getAccessibleContext().getAccessibleName()).isNotBlank());
    }
  }
}
