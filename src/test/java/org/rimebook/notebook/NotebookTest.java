package org.rimebook.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.notebook.Lines.FILE;
import static org.rimebook.notebook.Lines.entry;
import static org.rimebook.notebook.Lines.withdrawal;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.station.Problem;

class NotebookTest {

  private static Notebook read(String... lines) {
    return NotebookReader.read(String.join("\n", lines) + "\n", FILE);
  }

  private static List<String> counting(Notebook notebook) {
    return notebook.inForce().stream().map(e -> e.header().id()).toList();
  }

  @Test
  void anEntryCountsUntilItIsWithdrawn() {
    Notebook notebook =
        read(
            entry("a", "remark"), entry("b", "remark"), entry("c", "remark"), withdrawal("w", "b"));
    assertThat(counting(notebook)).containsExactly("a", "c");
    assertThat(notebook.history()).hasSize(4);
    assertThat(notebook.notes()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 7, 5000})
  void withdrawingAWithdrawalBringsTheEntryBackHoweverLongTheChain(int withdrawals) {
    List<String> lines = new ArrayList<>(List.of(entry("w0", "remark")));
    for (int i = 1; i <= withdrawals; i++) {
      lines.add(withdrawal("w" + i, "w" + (i - 1)));
    }
    Notebook notebook = read(lines.toArray(String[]::new));
    assertThat(counting(notebook)).hasSize(withdrawals % 2 == 0 ? 1 : 0);
  }

  @Test
  void anEntryWithdrawnTwiceComesBackWhenBothAreWithdrawn() {
    String[] lines = {
      entry("a", "remark"), withdrawal("v", "a"), withdrawal("w", "a"), withdrawal("x", "v")
    };
    assertThat(counting(read(lines))).isEmpty();
    assertThat(counting(read(lines[0], lines[1], lines[2], lines[3], withdrawal("y", "w"))))
        .containsExactly("a");
  }

  @Test
  void aWithdrawalActsOnlyOnWhatWasWrittenBefore() {
    Notebook notebook = read(withdrawal("w", "a"), entry("a", "remark"));
    assertThat(counting(notebook)).containsExactly("a");
    assertThat(notebook.notes())
        .extracting(Problem::what)
        .containsExactly("entry names \"a\", which isn't an earlier entry");
  }

  @Test
  void aWithdrawalOfItselfIsNotedAndWithdrawsNothing() {
    Notebook notebook = read(entry("a", "remark"), withdrawal("w", "w"));
    assertThat(counting(notebook)).containsExactly("a");
    assertThat(notebook.notes()).extracting(Problem::line).containsExactly(2L);
  }

  @Test
  void aWithdrawalOfAnEntryThatIsNotThereIsNoted() {
    Notebook notebook = read(withdrawal("w", "gone"), entry("a", "remark"));
    assertThat(counting(notebook)).containsExactly("a");
    assertThat(notebook.notes())
        .extracting(Problem::what)
        .containsExactly("entry names \"gone\", which no entry has as its id");
  }

  @Test
  void notesStandInTheOrderOfTheFile() {
    Notebook notebook =
        read(
            withdrawal("w", "gone"),
            "nonsense",
            withdrawal("x", "gone"),
            entry("a", "remark", "\"z\": 1"));
    assertThat(notebook.notes()).extracting(Problem::line).containsExactly(1L, 2L, 3L, 4L);
  }
}
