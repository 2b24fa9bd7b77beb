package org.rimebook.export.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * One line of a strip's key: a sample and a name.
 *
 * @param name the name
 * @param colour colour of the sample
 * @param stroke its stroke; one without a width makes it a patch
 */
record KeyItem(String name, Color colour, BasicStroke stroke) {

  private static final float DOT_PT = 4.4f;
  private static final double SAMPLE_PT = 18;
  private static final double GAP_PT = 3;
  private static final double APART_PT = 10;
  private static final double TOP_PT = 3;
  private static final double LINE_PT = 9.5;

  static KeyItem patch(String name, Color colour) {
    return new KeyItem(name, colour, new BasicStroke(0));
  }

  static KeyItem dot(String name) {
    return new KeyItem(
        name,
        FigureLook.INK,
        new BasicStroke(
            DOT_PT,
            BasicStroke.CAP_ROUND,
            BasicStroke.JOIN_ROUND,
            1,
            new float[] {0, (float) (2 * SAMPLE_PT)},
            0));
  }

  private double widthPt(Graphics2D g) {
    return SAMPLE_PT + GAP_PT + g.getFontMetrics().stringWidth(name);
  }

  /** Draws what a strip shows at the top left of an area. */
  static void label(Graphics2D g, String words, Rectangle2D area) {
    g.setFont(Typeface.MEDIUM.font(FigureLook.LABEL_PT));
    g.setPaint(FigureLook.INK);
    double baseline = area.getMinY() + TOP_PT + LINE_PT / 2 + FigureLook.LABEL_PT * 0.36;
    g.drawString(words, (float) (area.getMinX() + 2 * GAP_PT), (float) baseline);
  }

  /** Draws a key at the top right of an area. */
  static void draw(Graphics2D g, List<KeyItem> items, Rectangle2D area) {
    if (items.isEmpty()) {
      return;
    }
    g.setFont(Typeface.REGULAR.font(FigureLook.TICK_PT));
    double width = items.stream().mapToDouble(item -> item.widthPt(g) + APART_PT).sum();
    double x = Math.max(area.getMinX() + GAP_PT, area.getMaxX() - width);
    double y = area.getMinY() + TOP_PT;
    for (KeyItem item : items) {
      item.draw(g, x, y + LINE_PT / 2);
      x += item.widthPt(g) + APART_PT;
    }
  }

  private void draw(Graphics2D g, double x, double middle) {
    g.setPaint(colour);
    if (stroke.getLineWidth() > 0) {
      g.setStroke(stroke);
      g.draw(new Line2D.Double(x, middle, x + SAMPLE_PT, middle));
    } else {
      Rectangle2D patch =
          new Rectangle2D.Double(x + SAMPLE_PT / 3, middle - 3, SAMPLE_PT * 2 / 3, 6);
      g.fill(patch);
      g.setPaint(FigureLook.INK);
      g.setStroke(FigureLook.line(0, 0.3));
      g.draw(patch);
    }
    g.setPaint(FigureLook.INK);
    g.drawString(
        name, (float) (x + SAMPLE_PT + GAP_PT), (float) (middle + FigureLook.TICK_PT * 0.36));
  }
}
