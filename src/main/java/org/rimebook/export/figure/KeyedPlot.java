package org.rimebook.export.figure;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.PlotState;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.data.xy.XYDataset;

/**
 * A plot that says at the top left inside what it shows, and at the top right which line is which;
 * a band above the data is kept free for both.
 */
final class KeyedPlot extends XYPlot {

  private static final long serialVersionUID = 1;

  /** Height of the band [pt]. */
  static final double BAND_PT = 15;

  private final transient List<KeyItem> key;
  private final String words;

  /**
   * @param points what is drawn
   * @param axis the vertical axis; its label moves inside
   * @param renderer draws it
   * @param key its key
   */
  KeyedPlot(XYDataset points, ValueAxis axis, XYItemRenderer renderer, List<KeyItem> key) {
    super(points, null, axis, renderer);
    this.key = List.copyOf(key);
    this.words = axis.getLabel();
    axis.setLabel(null);
    FigureLook.dress(this);
  }

  @Override
  public void draw(
      Graphics2D g2,
      Rectangle2D area,
      Point2D anchor,
      PlotState parentState,
      PlotRenderingInfo info) {
    PlotRenderingInfo own = info == null ? new PlotRenderingInfo(null) : info;
    super.draw(g2, area, anchor, parentState, own);
    KeyItem.label(g2, words, own.getDataArea());
    KeyItem.draw(g2, key, own.getDataArea());
  }

  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(this);
  }
}
