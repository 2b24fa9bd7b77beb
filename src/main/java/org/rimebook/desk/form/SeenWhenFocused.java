package org.rimebook.desk.form;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JComponent;

/** Brings a control into view when the keyboard reaches it. */
public final class SeenWhenFocused extends FocusAdapter {

  private static final SeenWhenFocused ONE = new SeenWhenFocused();

  private SeenWhenFocused() {}

  /** Watches every control in a container. */
  public static void watch(Container container) {
    for (Component part : container.getComponents()) {
      part.removeFocusListener(ONE);
      part.addFocusListener(ONE);
      if (part instanceof Container inner) {
        watch(inner);
      }
    }
  }

  /** A text field only scrolls its own text when it is asked; what it lies in is asked instead. */
  @Override
  public void focusGained(FocusEvent event) {
    if (event.getComponent().getParent() instanceof JComponent around) {
      around.scrollRectToVisible(event.getComponent().getBounds());
    }
  }
}
