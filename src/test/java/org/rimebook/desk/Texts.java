package org.rimebook.desk;

import java.awt.Component;
import java.awt.Container;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;

/** The words that show in a window. */
final class Texts {

  private Texts() {}

  static String in(Container container) {
    StringBuilder words = new StringBuilder();
    collect(container, words);
    return words.toString();
  }

  private static void collect(Component component, StringBuilder words) {
    if (!component.isShowing()) {
      return;
    }
    if (component instanceof JLabel label) {
      words.append(label.getText()).append('\n');
    } else if (component instanceof AbstractButton button) {
      words.append(button.getText()).append('\n');
    } else if (component instanceof JTextComponent text) {
      words.append(text.getText()).append('\n');
    }
    if (component instanceof Container container) {
      for (Component child : container.getComponents()) {
        collect(child, words);
      }
    }
  }
}
