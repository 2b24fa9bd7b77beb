package org.rimebook.desk.scatter;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.TickUnitSource;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.against.Range;

/** Two axes, their hairline grid and their labels; the plot lies the same whatever the numbers. */
final class AxisFrame {

  private static final int LEFT = 52;
  private static final int TOP = 28;
  private static final int BOTTOM = 40;

  private final XYPlot plot = new XYPlot();
  private final NumberAxis x = new NumberAxis();
  private final NumberAxis y = new NumberAxis();
  private String xLabel = "";
  private String yLabel = "";

  private final int right;

  /**
   * @param right room right of the plot at 100 %
   */
  AxisFrame(int right) {
    this.right = right;
    for (NumberAxis axis : new NumberAxis[] {x, y}) {
      axis.setStandardTickUnits(new Ticks());
      axis.setAxisLineVisible(false);
      axis.setTickMarksVisible(false);
    }
    plot.setDomainAxis(x);
    plot.setRangeAxis(y);
    plot.setInsets(RectangleInsets.ZERO_INSETS);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setOutlineVisible(false);
    plot.setBackgroundPaint(null);
  }

  /** Names the axes, with their units. */
  void label(String alongX, String alongY) {
    xLabel = alongX;
    yLabel = alongY;
  }

  /** Ticks of the x axis other than those that fit. */
  void ticksOfX(TickUnitSource units) {
    x.setStandardTickUnits(units);
  }

  /** What the axes cover; each has a length. */
  void cover(Range alongX, Range alongY) {
    x.setRange(alongX.from(), alongX.to());
    y.setRange(alongY.from(), alongY.to());
  }

  /** Where the plot lies in a component; at least a pixel each way. */
  Rectangle area(Dimension size) {
    int width = size.width - Look.px(LEFT) - Look.px(right);
    int height = size.height - Look.px(TOP) - Look.px(BOTTOM);
    return new Rectangle(Look.px(LEFT), Look.px(TOP), Math.max(1, width), Math.max(1, height));
  }

  /** Draws the grid, the numbers and the labels. */
  void paint(Graphics2D graphics, Dimension size) {
    Rectangle area = area(size);
    dress();
    plot.setFixedDomainAxisSpace(space(size.height - area.y - area.height));
    plot.setFixedRangeAxisSpace(space(area.x));
    Rectangle outer = new Rectangle(0, area.y, area.x + area.width, size.height - area.y);
    plot.draw(graphics, outer, null, null, null);
    graphics.setFont(Look.text(0.9));
    graphics.setColor(Look.muted());
    graphics.drawString(yLabel, Look.px(8), area.y - Look.px(10));
    int length = graphics.getFontMetrics().stringWidth(xLabel);
    graphics.drawString(xLabel, area.x + area.width - length, size.height - Look.px(6));
  }

  private static AxisSpace space(int pixels) {
    AxisSpace space = new AxisSpace();
    space.setBottom(pixels);
    space.setLeft(pixels);
    return space;
  }

  private void dress() {
    for (NumberAxis axis : new NumberAxis[] {x, y}) {
      axis.setTickLabelFont(Look.text(0.85));
      axis.setTickLabelPaint(Look.muted());
    }
    BasicStroke hairline = new BasicStroke(1);
    plot.setDomainGridlinePaint(Look.hairline());
    plot.setRangeGridlinePaint(Look.hairline());
    plot.setDomainGridlineStroke(hairline);
    plot.setRangeGridlineStroke(hairline);
  }
}
