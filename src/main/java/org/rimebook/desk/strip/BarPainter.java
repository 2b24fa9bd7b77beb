package org.rimebook.desk.strip;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.series.CatchBars;
import org.rimebook.totals.Quality;

/**
 * Draws bars by quality: good filled, unchecked filled to half the height, suspect filled to half
 * the width, estimate hollow, poor hollow with a dashed edge, and a cross where there is no total.
 */
final class BarPainter {

  private final Graphics2D graphics;
  private final Canvas canvas;
  private final Color fill = Emphasis.mixed(Look.ink(), Look.paper(), 0.62);
  private final Color pale = Emphasis.mixed(Look.ink(), Look.paper(), 0.12);

  BarPainter(Graphics2D graphics, Canvas canvas) {
    this.graphics = graphics;
    this.canvas = canvas;
  }

  /** A bar with room for a shape. */
  void shaped(CatchBars bars, int bar) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    double left = Math.rint(canvas.x(bars.fromMs(bar))) + canvas.thick(1);
    double right = Math.rint(canvas.x(bars.toMs(bar))) - canvas.thick(1);
    if (bars.isMissing(bar)) {
      cross((left + right) / 2);
      return;
    }
    double base = canvas.row(0);
    double top = canvas.row(bars.catchMm(bar));
    if (top < base) {
      shape(new Rectangle2D.Double(left, top, right - left, base - top), bars.quality(bar));
      if (right - left >= canvas.thick(8)) {
        whisker(bars, bar, (left + right) / 2);
      }
    }
    if (bars.sinceMs(bar) < bars.fromMs(bar)) {
      graphics.setColor(Look.muted());
      graphics.setStroke(dashed());
      graphics.draw(new Line2D.Double(canvas.x(bars.sinceMs(bar)), top, left, top));
    }
  }

  /** A bar so narrow that several may share a column: the tallest is seen. */
  void thin(CatchBars bars, int bar) {
    if (bars.isMissing(bar)) {
      return;
    }
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    int left = (int) Math.floor(canvas.x(bars.fromMs(bar)));
    int right = Math.max(left + 1, (int) Math.floor(canvas.x(bars.toMs(bar))));
    int top = canvas.row(bars.catchMm(bar));
    graphics.setColor(fill);
    graphics.fillRect(left, top, right - left, canvas.row(0) - top);
  }

  private void shape(Rectangle2D whole, Quality quality) {
    graphics.setColor(quality == Quality.GOOD ? fill : pale);
    graphics.fill(whole);
    graphics.setColor(fill);
    double half = whole.getHeight() / 2;
    if (quality == Quality.UNCHECKED) {
      graphics.fill(
          new Rectangle2D.Double(whole.getX(), whole.getY() + half, whole.getWidth(), half));
    } else if (quality == Quality.SUSPECT) {
      graphics.fill(
          new Rectangle2D.Double(
              whole.getX(), whole.getY(), whole.getWidth() / 2, whole.getHeight()));
    }
    if (quality != Quality.GOOD) {
      graphics.setStroke(quality == Quality.POOR ? dashed() : new BasicStroke(canvas.thick(1)));
      graphics.draw(whole);
    }
  }

  private void whisker(CatchBars bars, int bar, double x) {
    double mm = bars.catchMm(bar);
    double by = bars.uncertaintyMm(bar);
    graphics.setColor(Look.ink());
    graphics.setStroke(new BasicStroke(canvas.thick(1)));
    graphics.draw(new Line2D.Double(x, canvas.y(mm + by), x, canvas.y(Math.max(0, mm - by))));
  }

  private void cross(double x) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    double arm = 2.5 * canvas.scale();
    double y = canvas.y(0) - 2 * arm;
    graphics.setColor(Look.muted());
    graphics.setStroke(new BasicStroke(canvas.thick(1)));
    graphics.draw(new Line2D.Double(x - arm, y - arm, x + arm, y + arm));
    graphics.draw(new Line2D.Double(x - arm, y + arm, x + arm, y - arm));
  }

  private BasicStroke dashed() {
    float dash = (float) (3 * canvas.scale());
    return new BasicStroke(
        canvas.thick(1),
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_MITER,
        10,
        new float[] {dash, dash},
        0);
  }
}
