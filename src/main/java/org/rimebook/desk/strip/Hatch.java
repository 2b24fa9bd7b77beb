package org.rimebook.desk.strip;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.util.BitSet;
import org.rimebook.desk.look.Look;

/** Hatches missing time, in pixels of the device. */
final class Hatch {

  private final Graphics2D graphics;
  private final int apart;

  /**
   * @param graphics in pixels of the device
   * @param scale device pixels a pixel
   */
  Hatch(Graphics2D graphics, double scale) {
    this.graphics = graphics;
    this.apart = Math.max(3, (int) Math.round(Look.px(6) * scale));
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setStroke(new BasicStroke((float) Math.max(1, scale)));
  }

  /** Hatches the columns of a plot that aren't covered. */
  void paint(Rectangle plot, BitSet covered) {
    int from = covered.nextClearBit(0);
    while (from < plot.width) {
      int next = covered.nextSetBit(from);
      int to = next < 0 ? plot.width : Math.min(next, plot.width);
      stretch(new Rectangle(plot.x + from, plot.y, to - from, plot.height));
      from = covered.nextClearBit(to);
    }
  }

  private void stretch(Rectangle area) {
    Color missing = Look.missing();
    graphics.setColor(Emphasis.mixed(missing, Look.paper(), 0.3));
    graphics.fill(area);
    graphics.setColor(missing);
    Graphics2D inside = (Graphics2D) graphics.create();
    inside.clip(area);
    int from = area.x - Math.floorMod(area.x, apart) - area.height / apart * apart - apart;
    for (int x = from; x < area.x + area.width; x += apart) {
      inside.drawLine(x, area.y + area.height, x + area.height, area.y);
    }
    inside.dispose();
  }
}
