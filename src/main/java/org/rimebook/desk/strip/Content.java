package org.rimebook.desk.strip;

import java.awt.Graphics2D;
import java.util.BitSet;
import java.util.List;
import org.rimebook.desk.model.Extent;
import org.rimebook.station.Interval;

/** What a strip draws in its plot. */
interface Content {

  /** Looks at a stretch of time in so many pixel columns of the device, before it is drawn. */
  void look(Interval visible, int columns);

  /** The values in view. */
  Extent inView();

  /** Columns with readings, or bridged between readings; all others are missing time. */
  BitSet covered();

  /** Draws it, in pixels of the device. */
  void draw(Graphics2D graphics, Canvas canvas, Emphasis emphasis);

  /** Names to stand at the lines' ends, at the value each ends with. */
  List<Label> ends();

  /** What was read at an instant. */
  List<Reading> at(long epochMs);

  /**
   * A name at a line's end.
   *
   * @param name the name
   * @param wire number of the wire in the sheet; negative for anything else
   * @param value where the line ends
   */
  record Label(String name, int wire, double value) {}

  /**
   * A reading under the cross-hair.
   *
   * @param name whose it is; empty where the strip has only one
   * @param wire number of the wire in the sheet; negative for anything else
   * @param words the value, or why there is none
   */
  record Reading(String name, int wire, String words) {}
}
