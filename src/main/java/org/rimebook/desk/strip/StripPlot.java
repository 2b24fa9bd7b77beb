package org.rimebook.desk.strip;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Extent;
import org.rimebook.station.Interval;

/** One strip: content on an axis of values, its name inside at the top left. */
final class StripPlot {

  private final String title;
  private final Content content;
  private final ContentRenderer renderer;
  private final NumberAxis values = ValueAxes.values();
  private final NumberAxis time = ValueAxes.hidden();
  private final XYPlot plot;
  private boolean ranged;

  StripPlot(String title, Content content) {
    this.title = title;
    this.content = content;
    this.renderer = new ContentRenderer(content);
    this.plot = new XYPlot(new ContentRenderer.Everything(), time, values, renderer);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setDomainGridlinesVisible(false);
  }

  Content content() {
    return content;
  }

  String title() {
    return title;
  }

  /** The values its axis spans. */
  Extent range() {
    return new Extent(values.getLowerBound(), values.getUpperBound());
  }

  /** Whether it has been said what its axis spans. */
  boolean isRanged() {
    return ranged;
  }

  /** Sets the values its axis spans. */
  void range(Extent range) {
    if (range.most() > range.least()) {
      ranged = true;
      values.setRange(range.least(), range.most());
    }
  }

  /**
   * Sorts what is in view into the device's columns, and fits the axis to it when told to, or when
   * there is none yet.
   */
  void look(Interval visible, int columns, boolean fits) {
    content.look(visible, columns);
    if (fits || !ranged) {
      range(content.inView());
    }
  }

  /** Draws it around the rectangle of its plot. */
  void paint(Graphics2D graphics, Rectangle area, Interval visible, Emphasis emphasis) {
    ValueAxes.dress(values);
    time.setRange(visible.fromMs(), visible.toMs());
    renderer.show(visible, emphasis);
    plot.setRangeGridlinePaint(Look.hairline());
    plot.setRangeGridlineStroke(new BasicStroke(1));
    int margin = StackLayout.left();
    plot.setFixedRangeAxisSpace(space(margin));
    plot.setFixedDomainAxisSpace(new AxisSpace());
    plot.draw(
        graphics,
        new Rectangle2D.Double(area.x - margin, area.y, area.width + margin, area.height),
        null,
        null,
        null);
    title(graphics, area);
  }

  private static AxisSpace space(int left) {
    AxisSpace space = new AxisSpace();
    space.setLeft(left);
    return space;
  }

  private void title(Graphics2D graphics, Rectangle area) {
    graphics.setFont(Look.text(0.92));
    FontMetrics metrics = graphics.getFontMetrics();
    Color paper = Look.paper();
    int x = area.x + Look.px(6);
    int y = area.y + Look.px(3);
    graphics.setColor(Look.faint(paper, 0.8));
    graphics.fillRect(
        x - Look.px(2), y, metrics.stringWidth(title) + Look.px(4), metrics.getHeight());
    graphics.setColor(Look.muted());
    graphics.drawString(title, x, y + metrics.getAscent());
  }
}
