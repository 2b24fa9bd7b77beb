package org.rimebook.desk.strip;

import java.awt.Rectangle;

/** Where time lies on the stack of strips; x and y in the stack's own pixels. */
public interface StackGeometry {

  /** The plots of all strips together: their common left and right, from top to bottom. */
  Rectangle plots();

  /** Where an instant lies; outside the plots when it is outside the view. */
  int xAt(long epochMs);

  /** The instant at a place [ms since epoch]. */
  long timeAt(int x);
}
