package org.rimebook.desk.page;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys of one component, beside those of the commands. */
final class Keys {

  private Keys() {}

  /**
   * Binds a key.
   *
   * @param focus when it works, as in {@link JComponent#getInputMap(int)}
   */
  static void bind(JComponent component, int focus, KeyStroke stroke, Runnable deed) {
    component.getInputMap(focus).put(stroke, stroke.toString());
    component
        .getActionMap()
        .put(
            stroke.toString(),
            new AbstractAction() {
              private static final long serialVersionUID = 1;

              @Override
              public void actionPerformed(ActionEvent event) {
                deed.run();
              }
            });
  }
}
