package org.rimebook.desk.series;

/**
 * One line of a strip.
 *
 * @param name its name; empty where the strip has only one
 * @param wire number of the wire in the sheet; negative for anything else
 * @param used readings that are used
 * @param leftOut readings that have a value and aren't used
 */
public record TraceSeries(String name, int wire, Pyramid used, Pyramid leftOut) {

  /** A line of readings all of which are used. */
  static TraceSeries whole(String name, Series readings) {
    return new TraceSeries(name, -1, Pyramid.of(readings), Pyramid.of(PickedSeries.none(readings)));
  }
}
