package org.rimebook.desk.strip;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;
import java.util.OptionalInt;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.series.SeasonSeries;
import org.rimebook.desk.series.Series;
import org.rimebook.desk.series.TraceSeries;

/** Tells which wire's line passes a place in the strips. */
final class WireLines {

  /** A line is hit up to this far off [pixels at 100 %]. */
  private static final int REACH = 4;

  private final SeasonSeries lines;
  private final StackGeometry geometry;

  WireLines(SeasonSeries lines, StackGeometry geometry) {
    this.lines = lines;
    this.geometry = geometry;
  }

  /**
   * The wire whose line is nearest to a place within reach.
   *
   * @param place in the stack's own pixels
   * @param strip the strip there
   * @param area where it lies
   */
  OptionalInt at(Point place, Strips.Shown strip, Rectangle area) {
    List<TraceSeries> traces = lines.lines().getOrDefault(strip.setting().kind(), List.of());
    Extent range = strip.plot().range();
    long columnMs = geometry.timeAt(place.x + 1) - geometry.timeAt(place.x);
    OptionalInt nearest = OptionalInt.empty();
    double least = Look.px(REACH);
    for (TraceSeries trace : traces) {
      Series series = trace.used().series();
      int reading = Nearest.of(series, geometry.timeAt(place.x), columnMs);
      if (trace.wire() < 0 || reading < 0) {
        continue;
      }
      double share = (series.value(reading) - range.least()) / (range.most() - range.least());
      double off = Math.abs(area.y + area.height * (1 - share) - place.y);
      if (off <= least) {
        least = off;
        nearest = OptionalInt.of(trace.wire());
      }
    }
    return nearest;
  }
}
