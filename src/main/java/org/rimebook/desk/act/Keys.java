package org.rimebook.desk.act;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.KeyStroke;

/** Keys as a person names them. */
public final class Keys {

  private static final Map<Integer, String> NAMES =
      Map.ofEntries(
          Map.entry(KeyEvent.VK_LEFT, "Left"),
          Map.entry(KeyEvent.VK_RIGHT, "Right"),
          Map.entry(KeyEvent.VK_UP, "Up"),
          Map.entry(KeyEvent.VK_DOWN, "Down"),
          Map.entry(KeyEvent.VK_ENTER, "Enter"),
          Map.entry(KeyEvent.VK_ESCAPE, "Esc"),
          Map.entry(KeyEvent.VK_DELETE, "Delete"),
          Map.entry(KeyEvent.VK_SPACE, "Space"),
          Map.entry(KeyEvent.VK_HOME, "Home"),
          Map.entry(KeyEvent.VK_END, "End"),
          Map.entry(KeyEvent.VK_PAGE_UP, "Page up"),
          Map.entry(KeyEvent.VK_PAGE_DOWN, "Page down"),
          Map.entry(KeyEvent.VK_PLUS, "+"),
          Map.entry(KeyEvent.VK_EQUALS, "="),
          Map.entry(KeyEvent.VK_MINUS, "-"),
          Map.entry(KeyEvent.VK_OPEN_BRACKET, "["),
          Map.entry(KeyEvent.VK_CLOSE_BRACKET, "]"),
          Map.entry(KeyEvent.VK_COMMA, ","),
          Map.entry(KeyEvent.VK_PERIOD, "."));

  private Keys() {}

  /** The key's name with its modifiers, for example "Ctrl+Z". */
  public static String words(KeyStroke key) {
    List<String> parts = new ArrayList<>();
    int modifiers = key.getModifiers();
    if ((modifiers & InputEvent.CTRL_DOWN_MASK) != 0) {
      parts.add("Ctrl");
    }
    if ((modifiers & InputEvent.ALT_DOWN_MASK) != 0) {
      parts.add("Alt");
    }
    if ((modifiers & InputEvent.SHIFT_DOWN_MASK) != 0) {
      parts.add("Shift");
    }
    parts.add(name(key));
    return String.join("+", parts);
  }

  private static String name(KeyStroke key) {
    int code = key.getKeyCode();
    if (code == KeyEvent.VK_UNDEFINED) {
      return String.valueOf(Character.toUpperCase(key.getKeyChar()));
    }
    boolean letterOrDigit =
        code >= KeyEvent.VK_0 && code <= KeyEvent.VK_9
            || code >= KeyEvent.VK_A && code <= KeyEvent.VK_Z;
    if (letterOrDigit) {
      return String.valueOf((char) code);
    }
    if (code >= KeyEvent.VK_F1 && code <= KeyEvent.VK_F12) {
      return "F" + (code - KeyEvent.VK_F1 + 1);
    }
    return NAMES.getOrDefault(code, KeyEvent.getKeyText(code));
  }
}
