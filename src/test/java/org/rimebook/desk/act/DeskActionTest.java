package org.rimebook.desk.act;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeskActionTest {

  private final List<String> done = new ArrayList<>();
  private boolean possible;

  @Test
  void anActionThatCantBeDoneNowDoesNothing() {
    DeskAction action =
        DeskAction.named(Group.VIEW, "Fit", () -> done.add("fit")).when(() -> possible).done();

    action.actionPerformed(new ActionEvent(this, 0, ""));
    assertThat(done).isEmpty();
    assertThat(action.isEnabled()).isFalse();

    possible = true;
    action.refresh();
    action.actionPerformed(new ActionEvent(this, 0, ""));
    assertThat(done).containsExactly("fit");
    assertThat(action.isEnabled()).isTrue();
  }

  @Test
  void aKeyThatDoesNotExistIsRefused() {
    assertThatThrownBy(() -> DeskAction.named(Group.VIEW, "Fit", () -> {}).key("shift no-such"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("shift no-such");
  }

  @ParameterizedTest
  @CsvSource({
    "control Z, Ctrl+Z",
    "control shift Z, Ctrl+Shift+Z",
    "alt LEFT, Alt+Left",
    "F1, F1",
    "V, V",
    "MINUS, -",
    "DELETE, Delete"
  })
  void aKeyIsNamedAsAPersonWould(String stroke, String words) {
    assertThat(Keys.words(KeyStroke.getKeyStroke(stroke))).isEqualTo(words);
  }
}
