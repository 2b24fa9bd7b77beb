package org.rimebook.desk.strip;

import java.awt.Graphics2D;

/** Something drawn over the strips. */
public interface Overlay {

  /**
   * Draws it; called on the event thread at each painting.
   *
   * @param graphics to be left as it was
   * @param geometry where time lies
   */
  void paint(Graphics2D graphics, StackGeometry geometry);
}
