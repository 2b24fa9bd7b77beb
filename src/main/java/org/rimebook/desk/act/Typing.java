package org.rimebook.desk.act;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JComboBox;
import javax.swing.JSpinner;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Whether keys go into a field. */
final class Typing {

  private Typing() {}

  static boolean now() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner instanceof JTextComponent text && text.isEditable() && text.isEnabled()
        || owner instanceof JComboBox<?>
        || owner != null && SwingUtilities.getAncestorOfClass(JSpinner.class, owner) != null;
  }
}
