package org.rimebook.desk.strip;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import org.rimebook.desk.series.Columns;
import org.rimebook.desk.series.Series;

/**
 * Draws a series: as a smooth line where no more than a reading falls in each column, else as the
 * range of each column, exact to the pixel.
 */
final class TracePainter {

  private static final double LINE = 1.25;
  private static final double ROOM = 6;

  private final Graphics2D graphics;
  private final Canvas canvas;

  TracePainter(Graphics2D graphics, Canvas canvas) {
    this.graphics = graphics;
    this.canvas = canvas;
  }

  /** Draws a line in the colour set, stroked so where there is room for it. */
  void line(Columns columns, BasicStroke stroke) {
    if (columns.endIndex() - columns.firstIndex() <= columns.width()) {
      smooth(columns, stroke);
    } else {
      dense(columns);
    }
  }

  /**
   * Draws readings that stand alone as hollow marks, and others as the range of each column. What
   * lies beyond the axis is marked at its end.
   */
  void marks(Columns columns) {
    dense(columns);
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setStroke(new BasicStroke(canvas.thick(1)));
    int room = canvas.thick(ROOM);
    int before = -room;
    int column = next(columns, 0);
    while (column < columns.width()) {
      int after = next(columns, column + 1);
      boolean apart =
          column - before >= room && (after - column >= room || after == columns.width());
      if (apart && columns.first(column) == columns.last(column)) {
        mark(columns.series(), columns.first(column));
      }
      before = column;
      column = after;
    }
  }

  private static int next(Columns columns, int from) {
    int column = from;
    while (column < columns.width() && !columns.holds(column)) {
      column++;
    }
    return column;
  }

  private void mark(Series series, int index) {
    double size = canvas.thick(5);
    double top = canvas.plot().y + size / 2;
    double bottom = canvas.plot().y + canvas.plot().height - size / 2 - 1;
    double y = Math.max(top, Math.min(bottom, canvas.y(series.value(index))));
    double x = canvas.x(series.timeMs(index));
    graphics.draw(new Ellipse2D.Double(x - size / 2, y - size / 2, size, size));
  }

  private void smooth(Columns columns, BasicStroke stroke) {
    Series series = columns.series();
    Path2D.Double path = new Path2D.Double();
    boolean dots = columns.endIndex() - columns.firstIndex() < columns.width() / 8;
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    int before = -1;
    boolean alone = false;
    int from = Math.max(0, columns.firstIndex() - Coverage.MARGIN);
    int to = Math.min(series.size(), columns.endIndex() + Coverage.MARGIN);
    for (int i = from; i < to; i++) {
      double value = series.value(i);
      if (Double.isNaN(value)) {
        continue;
      }
      double x = canvas.x(series.timeMs(i));
      double y = canvas.y(value);
      boolean joined = before >= 0 && series.joins(before, i);
      if (alone && !joined) {
        dot(canvas.x(series.timeMs(before)), canvas.y(series.value(before)));
      }
      if (joined) {
        path.lineTo(x, y);
      } else {
        path.moveTo(x, y);
      }
      if (dots) {
        dot(x, y);
      }
      alone = !joined;
      before = i;
    }
    if (alone) {
      dot(canvas.x(series.timeMs(before)), canvas.y(series.value(before)));
    }
    graphics.setStroke(stroke);
    graphics.draw(path);
  }

  private void dot(double x, double y) {
    double size = canvas.thick(2.5);
    graphics.fill(new Ellipse2D.Double(x - size / 2, y - size / 2, size, size));
  }

  private void dense(Columns columns) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    Series series = columns.series();
    int thick = canvas.thick(LINE);
    graphics.setStroke(new BasicStroke(thick));
    int shift = (thick - 1) / 2;
    int before = -1;
    int topBefore = 0;
    int bottomBefore = 0;
    for (int column = 0; column < columns.width(); column++) {
      if (!columns.holds(column)) {
        continue;
      }
      int top = canvas.row(columns.most(column));
      int bottom = canvas.row(columns.least(column));
      int least = bottom;
      int most = top;
      if (before >= 0 && columns.joined(column)) {
        if (before < column - 1) {
          bridge(columns, before, column);
        } else if (topBefore < top || bottomBefore > bottom) {
          int from = canvas.row(series.value(columns.last(before)));
          top = Math.min(top, from);
          bottom = Math.max(bottom, from);
        }
      }
      int x = canvas.plot().x + column - shift;
      graphics.fillRect(x, top - shift, thick, bottom - top + thick);
      before = column;
      topBefore = most;
      bottomBefore = least;
    }
  }

  private void bridge(Columns columns, int before, int column) {
    int left = canvas.plot().x;
    int from = canvas.row(columns.series().value(columns.last(before)));
    int to = canvas.row(columns.series().value(columns.first(column)));
    graphics.drawLine(left + before, from, left + column, to);
  }
}
