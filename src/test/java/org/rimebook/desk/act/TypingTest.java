package org.rimebook.desk.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.Test;

class TypingTest {

  private static KeyEvent pressed(Component on, int modifiers, int code, char letter) {
    return new KeyEvent(on, KeyEvent.KEY_PRESSED, 0, modifiers, code, letter);
  }

  private static boolean typed(Component on, int modifiers, int code, char letter) {
    return Typing.isUnderWay(pressed(on, modifiers, code, letter));
  }

  @Test
  void aLetterInAFieldIsTypedNotMeantAsACommand() {
    assertThat(typed(new JTextField(), 0, KeyEvent.VK_B, 'b')).isTrue();
    assertThat(typed(new JTextArea(), InputEvent.SHIFT_DOWN_MASK, KeyEvent.VK_B, 'B')).isTrue();
  }

  @Test
  void aLetterElsewhereIsACommand() {
    assertThat(typed(new JLabel(), 0, KeyEvent.VK_B, 'b')).isFalse();
    JTextField fixed = new JTextField();
    fixed.setEditable(false);
    assertThat(typed(fixed, 0, KeyEvent.VK_B, 'b')).isFalse();
  }

  @Test
  void keysThatWriteNothingAreCommandsInAFieldToo() {
    JTextField field = new JTextField();
    assertThat(typed(field, InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_Z, 'z')).isFalse();
    assertThat(typed(field, 0, KeyEvent.VK_ESCAPE, (char) 27)).isFalse();
    assertThat(typed(field, 0, KeyEvent.VK_F2, KeyEvent.CHAR_UNDEFINED)).isFalse();
  }

  @Test
  void aPlainKeyIsAnOpenMenusAndNoCommandBeneathIt() {
    MenuSelectionManager menus = MenuSelectionManager.defaultManager();
    KeyEvent letter = pressed(new JLabel(), 0, KeyEvent.VK_S, 's');
    KeyEvent command = pressed(new JLabel(), InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_Z, 'z');
    menus.setSelectedPath(new MenuElement[] {new JMenuItem("Sign off")});
    try {
      assertThat(Typing.isForMenu(letter)).isTrue();
      assertThat(Typing.isForMenu(command)).isFalse();
    } finally {
      menus.clearSelectedPath();
    }
    assertThat(Typing.isForMenu(letter)).isFalse();
  }

  @Test
  void whatIsNotAKeyIsNotTyped() {
    assertThat(Typing.isUnderWay(new ActionEvent(new JTextField(), 0, ""))).isFalse();
    assertThat(Typing.isUnderWay(null)).isFalse();
  }
}
