package org.rimebook.desk.strip;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Set;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.AbstractXYItemRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.data.xy.AbstractXYDataset;
import org.jfree.data.xy.XYDataset;
import org.rimebook.station.Interval;

/** Draws all of a strip's content in one call, in pixels of the device. */
final class ContentRenderer extends AbstractXYItemRenderer {

  private final Content content;
  private Interval visible = new Interval(0, 1);
  private Emphasis emphasis = new Emphasis(Set.of());

  ContentRenderer(Content content) {
    this.content = content;
  }

  /** What the next drawing shows. */
  void show(Interval stretch, Emphasis strongly) {
    visible = stretch;
    emphasis = strongly;
  }

  @Override
  public XYItemRendererState initialise(
      Graphics2D graphics,
      Rectangle2D area,
      XYPlot plot,
      XYDataset dataset,
      PlotRenderingInfo info) {
    XYItemRendererState state = super.initialise(graphics, area, plot, dataset, info);
    state.setProcessVisibleItemsOnly(false);
    return state;
  }

  @Override
  @SuppressWarnings("checkstyle:ParameterNumber")
  public void drawItem(
      Graphics2D graphics,
      XYItemRendererState state,
      Rectangle2D area,
      PlotRenderingInfo info,
      XYPlot plot,
      ValueAxis domain,
      ValueAxis range,
      XYDataset dataset,
      int series,
      int item,
      CrosshairState crosshair,
      int pass) {
    AffineTransform toDevice = graphics.getTransform();
    Rectangle onDevice = onDevice(toDevice, area);
    Graphics2D device = (Graphics2D) graphics.create();
    try {
      device.setTransform(new AffineTransform());
      device.clip(onDevice);
      double low = range.getLowerBound();
      double high = range.getUpperBound();
      Canvas canvas = new Canvas(onDevice, visible, low, high, toDevice.getScaleX());
      content.draw(device, canvas, emphasis);
    } finally {
      device.dispose();
    }
  }

  /** The pixels of the device that an area lies on. */
  static Rectangle onDevice(AffineTransform toDevice, Rectangle2D area) {
    Point2D from = toDevice.transform(new Point2D.Double(area.getX(), area.getY()), null);
    Point2D to = toDevice.transform(new Point2D.Double(area.getMaxX(), area.getMaxY()), null);
    int x = (int) Math.round(from.getX());
    int y = (int) Math.round(from.getY());
    return new Rectangle(x, y, (int) Math.round(to.getX()) - x, (int) Math.round(to.getY()) - y);
  }

  /** One series of one item, for which everything is drawn. */
  static final class Everything extends AbstractXYDataset {
    @Override
    public int getSeriesCount() {
      return 1;
    }

    @Override
    public Comparable<?> getSeriesKey(int series) {
      return 0;
    }

    @Override
    public int getItemCount(int series) {
      return 1;
    }

    @Override
    public Number getX(int series, int item) {
      return 0;
    }

    @Override
    public Number getY(int series, int item) {
      return 0;
    }
  }
}
