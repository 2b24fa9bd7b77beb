package org.rimebook.desk.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTEvent;
import java.awt.DefaultKeyboardFocusManager;
import java.awt.KeyEventDispatcher;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class OpeningKeyTest {

  private final JTextField note = new JTextField();
  private final Keyboard keys = new Keyboard();

  /** Says what of a key reaches the field. */
  private static final class Keyboard extends DefaultKeyboardFocusManager {
    boolean reaches(KeyEvent event) {
      List<KeyEventDispatcher> now = getKeyEventDispatchers();
      return now == null || now.stream().noneMatch(d -> d.dispatchKeyEvent(event));
    }
  }

  private KeyEvent pressed(char letter) {
    int code = KeyEvent.VK_D;
    return new KeyEvent(note, KeyEvent.KEY_PRESSED, 0, 0, code, letter);
  }

  private KeyEvent typed(char letter) {
    return new KeyEvent(note, KeyEvent.KEY_TYPED, 0, 0, KeyEvent.VK_UNDEFINED, letter);
  }

  private void open(AWTEvent by) {
    OpeningKey.swallow(by, keys);
  }

  @Test
  void theLetterOfTheKeyThatOpenedIsSwallowedOnce() {
    open(pressed('d'));
    assertThat(keys.reaches(typed('d'))).isFalse();
    assertThat(keys.reaches(typed('d'))).isTrue();
  }

  @Test
  void anotherLetterIsTyped() {
    open(pressed('d'));
    assertThat(keys.reaches(typed('x'))).isTrue();
    assertThat(keys.reaches(typed('d'))).isTrue();
  }

  @Test
  void aFormOpenedWithoutALetterSwallowsNone() {
    open(new ActionEvent(note, 0, ""));
    open(pressed(KeyEvent.CHAR_UNDEFINED));
    assertThat(keys.reaches(typed('d'))).isTrue();
  }

  @Test
  void aLetterTypedWithAKeyOfItsOwnIsText() {
    open(pressed('d'));
    assertThat(keys.reaches(pressed('d'))).isTrue();
    assertThat(keys.reaches(typed('d'))).isTrue();
  }
}
