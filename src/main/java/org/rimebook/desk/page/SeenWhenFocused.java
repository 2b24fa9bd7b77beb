package org.rimebook.desk.page;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JComponent;

/** Brings a control into view when the keyboard reaches it. */
final class SeenWhenFocused extends FocusAdapter {

  private static final SeenWhenFocused ONE = new SeenWhenFocused();

  private SeenWhenFocused() {}

  /** Watches every control in a container. */
  static void watch(Container container) {
    for (Component part : container.getComponents()) {
      part.removeFocusListener(ONE);
      part.addFocusListener(ONE);
      if (part instanceof Container inner) {
        watch(inner);
      }
    }
  }

  @Override
  public void focusGained(FocusEvent event) {
    if (event.getComponent() instanceof JComponent control) {
      control.scrollRectToVisible(bounds(control));
    }
  }

  private static Rectangle bounds(JComponent control) {
    return new Rectangle(0, 0, control.getWidth(), control.getHeight());
  }
}
