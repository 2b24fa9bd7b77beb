package org.rimebook.desk.act;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JComboBox;
import javax.swing.MenuSelectionManager;
import javax.swing.text.JTextComponent;

/** Tells keys that are typed into a field from keys that mean a command. */
final class Typing {

  private static final int COMMANDING =
      InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK | InputEvent.META_DOWN_MASK;

  private Typing() {}

  /**
   * Whether an event is a key that a field takes as text, so that no command with that key is
   * meant: a character without Control, Alt or Meta, while a text field or a choice that searches
   * its items by letter has the focus and no menu is open.
   */
  static boolean isUnderWay(AWTEvent event) {
    return event instanceof KeyEvent key
        && takesText(key.getComponent())
        && isPlain(key)
        && isText(key)
        && MenuSelectionManager.defaultManager().getSelectedPath().length == 0;
  }

  /**
   * Whether an event is a plain key pressed while a menu is open: it is the menu's, and no command
   * beneath it is meant. Whatever is chosen in a menu closes it before it is done.
   */
  static boolean isForMenu(AWTEvent event) {
    return event instanceof KeyEvent key
        && isPlain(key)
        && MenuSelectionManager.defaultManager().getSelectedPath().length > 0;
  }

  private static boolean isPlain(KeyEvent key) {
    return (key.getModifiersEx() & COMMANDING) == 0;
  }

  private static boolean isText(KeyEvent key) {
    return key.getKeyCode() != KeyEvent.VK_ESCAPE
        && key.getKeyCode() != KeyEvent.VK_ENTER
        && key.getKeyCode() != KeyEvent.VK_TAB
        && key.getKeyChar() != KeyEvent.CHAR_UNDEFINED;
  }

  private static boolean takesText(Component focused) {
    return focused instanceof JTextComponent text && text.isEditable()
        || focused instanceof JComboBox<?>;
  }
}
