package org.rimebook.desk.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.desk.page.MarkScene.inside;
import static org.rimebook.fixture.Bucket.span;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JToggleButton;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rimebook.desk.model.NotebookRow;
import org.rimebook.findings.Finding;
import org.rimebook.findings.FindingKind;
import org.rimebook.fixture.KeptSeason;
import org.rimebook.notebook.Entry;

class FindingCardTest {

  @TempDir private Path folder;
  private MarkScene scene;
  private FindingCard card;

  @BeforeEach
  void open() throws IOException {
    scene = new MarkScene(folder);
    card = inside(scene.desk.page(), FindingCard.class).findFirst().orElseThrow();
  }

  private static Finding gap(double from, double to, double strength) {
    return Finding.doubting(
        FindingKind.GAP,
        Finding.Subject.wire(span(from, to), "north"),
        "silent from " + from,
        strength,
        new Entry.Remark(new Entry.Header("", "", "", "why?"), Optional.of(span(from, to))));
  }

  private void find(Finding... findings) {
    scene.walk.found(List.of(findings));
  }

  private String words() {
    String labels =
        inside(card, JLabel.class)
            .filter(JLabel::isVisible)
            .map(JLabel::getText)
            .collect(Collectors.joining("\n"));
    return inside(card, JTextComponent.class)
        .filter(JTextComponent::isVisible)
        .map(JTextComponent::getText)
        .collect(Collectors.joining("\n", labels + "\n", ""));
  }

  private JButton button(String name) {
    return inside(card, JButton.class)
        .filter(b -> name.equals(b.getName()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void itSaysWhatIsKnownWhileNothingIsUnderReview() {
    assertThat(words()).contains("Looking for what is wrong");
    find();
    assertThat(words()).contains("Nothing is left to decide");
    find(gap(0, 1, 0.5));
    assertThat(words()).contains("1 finding left").doesNotContain("silent");
    assertThat(button("Accept").isEnabled()).isFalse();
  }

  @Test
  void itTellsWhatWhereWhyAndWhatIsProposed() {
    find(gap(0, 1, 0.9), gap(1, 2, 0.1));
    button("Next").doClick();
    assertThat(words())
        .contains(
            "Finding 1 of 2",
            "No readings",
            "10 Jan 00:00 to 01:00 (1 h), wire north",
            "strong evidence; totals are suspect",
            "silent from 0.0",
            "Proposed: remark",
            "why?");
    button("Next").doClick();
    assertThat(words()).contains("Finding 2 of 2", "faint evidence");
  }

  @Test
  void itTellsHowItIsFoundOnDemand() {
    find(gap(0, 1, 0.9));
    button("Next").doClick();
    assertThat(words()).doesNotContain("own choice");
    inside(card, JToggleButton.class).findFirst().orElseThrow().doClick();
    assertThat(words()).contains("own choice");
  }

  @Test
  void itsButtonsDecideAndWaitWhileAFormIsOpen() {
    find(gap(0, 1, 0.9), gap(1, 2, 0.1));
    button("Next").doClick();
    button("Dismiss").doClick();
    assertThat(button("Accept").isEnabled()).isFalse();
    assertThat(button("Next").isEnabled()).isFalse();
    scene.act("Give up");
    button("Accept").doClick();
    assertThat(scene.season.inForce()).hasSize(2);
    assertThat(words()).contains("Finding 1 of 1");
  }

  @Test
  void theListShowsFindingsAmongTheEntriesAndAlone() {
    scene.season.keeper().write(List.of(KeptSeason.noise(0, 1)));
    find(gap(1, 2, 0.9));
    JList<?> list = inside(scene.desk.page(), JList.class).findFirst().orElseThrow();
    assertThat(rows(list)).hasSize(3).hasAtLeastOneElementOfType(NotebookRow.Line.class);
    inside(scene.desk.page(), JComboBox.class)
        .findFirst()
        .orElseThrow()
        .setSelectedItem("Findings");
    assertThat(rows(list)).hasSize(2).last().isInstanceOf(NotebookRow.Found.class);
    list.setSelectedIndex(1);
    assertThat(scene.walk.left().reviewed()).contains(gap(1, 2, 0.9));
  }

  private static List<Object> rows(JList<?> list) {
    List<Object> rows = new ArrayList<>();
    for (int i = 0; i < list.getModel().getSize(); i++) {
      rows.add(list.getModel().getElementAt(i));
    }
    return rows;
  }

  @Test
  void theLaneShowsAFindingWithItsReasonAndChoosesIt() {
    find(gap(1, 2, 0.9));
    scene.click(scene.desk.lane(), 1.5, 1);
    assertThat(scene.walk.left().reviewed()).contains(gap(1, 2, 0.9));
    assertThat(scene.workspace.view().canGoBack()).isFalse();
    scene.act("Leave finding");
    scene.click(scene.desk.lane(), 1.5, 2);
    assertThat(scene.workspace.view().canGoBack()).isTrue();
  }
}
