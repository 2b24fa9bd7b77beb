package org.rimebook.desk.page;

import java.awt.Point;
import java.util.OptionalInt;

/** Tells which wire is drawn at a place on the stack of strips. */
@FunctionalInterface
public interface WireHits {

  /**
   * Number in the station sheet of the wire whose line or end label is there, if any.
   *
   * @param place in the stack's own pixels
   */
  OptionalInt wireAt(Point place);
}
