package org.rimebook.desk.strip;

import org.rimebook.desk.series.Columns;
import org.rimebook.desk.series.TraceSeries;

/**
 * One line of a strip, and what of it falls in each column of the view.
 *
 * @param name its name; empty where the strip has only one
 * @param wire number of the wire in the sheet; negative for anything else
 * @param used readings that are used
 * @param leftOut readings that aren't
 */
record Trace(String name, int wire, Columns used, Columns leftOut) {

  static Trace of(TraceSeries series) {
    return new Trace(
        series.name(), series.wire(), new Columns(series.used()), new Columns(series.leftOut()));
  }
}
