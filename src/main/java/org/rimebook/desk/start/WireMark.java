package org.rimebook.desk.start;

import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import javax.swing.JPanel;
import org.rimebook.desk.look.Look;

/** A piece of a wire's line with words beside it. */
final class WireMark extends JPanel {

  private final int wire;
  private final String words;

  WireMark(int wire, String words) {
    this.wire = wire;
    this.words = words;
    setOpaque(false);
    getAccessibleContext().setAccessibleName(words);
  }

  @Override
  public Dimension getPreferredSize() {
    FontMetrics metrics = getFontMetrics(Look.text(1));
    return new Dimension(Look.px(44) + metrics.stringWidth(words), metrics.getHeight());
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(Look.wire(wire));
    g.setStroke(Look.wireLine(wire));
    double middle = getHeight() / 2.0;
    g.draw(new Line2D.Double(0, middle, Look.px(32), middle));
    g.setColor(Look.ink());
    g.setFont(Look.text(1));
    g.drawString(words, Look.px(40), g.getFontMetrics().getAscent());
    g.dispose();
  }
}
