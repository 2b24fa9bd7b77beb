package org.rimebook.desk.page;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.rimebook.desk.look.Look;

/** Marks that the lane and the strips have in common. */
final class Ink {

  private static final Map<RenderingHints.Key, Object> SMOOTH =
      Map.of(
          RenderingHints.KEY_ANTIALIASING,
          RenderingHints.VALUE_ANTIALIAS_ON,
          RenderingHints.KEY_TEXT_ANTIALIASING,
          RenderingHints.VALUE_TEXT_ANTIALIAS_ON);

  private Ink() {}

  /** A copy that draws smoothly; to be disposed of. */
  static Graphics2D of(Graphics graphics) {
    Graphics2D own = (Graphics2D) graphics.create();
    own.addRenderingHints(SMOOTH);
    return own;
  }

  /** Slanted lines inside an area. */
  static void hatch(Graphics2D graphics, Rectangle area, Color colour) {
    Graphics2D own = (Graphics2D) graphics.create();
    own.clip(area);
    Rectangle seen = own.getClipBounds();
    if (seen != null && !seen.isEmpty()) {
      own.setColor(colour);
      own.setStroke(new BasicStroke(Math.max(1, Look.px(1))));
      int apart = Look.px(5);
      int first = Math.floorDiv(seen.x - area.height, apart) * apart;
      for (int x = first; x < seen.x + seen.width; x += apart) {
        own.drawLine(x, area.y + area.height, x + area.height, area.y);
      }
    }
    own.dispose();
  }

  /** A grip on an edge: something a hand can take. */
  static void grip(Graphics2D graphics, int x, int middleY, int height) {
    int width = Look.px(5);
    graphics.setColor(Look.paper());
    graphics.fillRoundRect(x - width / 2, middleY - height / 2, width, height, width, width);
    graphics.setColor(Look.accent());
    graphics.setStroke(Look.line());
    graphics.drawRoundRect(x - width / 2, middleY - height / 2, width, height, width, width);
  }

  /**
   * A time on a ground of its own, beside an edge and within bounds.
   *
   * @param before whether it stands to the left of the edge
   */
  static void label(Graphics2D graphics, String words, Rectangle within, int x, boolean before) {
    graphics.setFont(Look.text(0.92));
    FontMetrics metrics = graphics.getFontMetrics();
    int pad = Look.px(4);
    int width = metrics.stringWidth(words) + 2 * pad;
    int left = before ? x - width - pad : x + pad;
    left = Math.max(within.x, Math.min(left, within.x + within.width - width));
    int height = metrics.getHeight() + pad;
    graphics.setColor(Look.accent());
    graphics.fillRoundRect(left, within.y, width, height, 2 * pad, 2 * pad);
    graphics.setColor(Look.paper());
    graphics.drawString(words, left + pad, within.y + pad / 2 + metrics.getAscent());
  }

  /** As much of the words as fits, with an ellipsis; empty when hardly any does. */
  static String elided(String words, FontMetrics metrics, int width) {
    if (metrics.stringWidth(words) <= width) {
      return words;
    }
    for (int length = words.length() - 1; length >= 2; length--) {
      String part = words.substring(0, length).stripTrailing() + "\u2026";
      if (metrics.stringWidth(part) <= width) {
        return part;
      }
    }
    return "";
  }

  /** Outlines a shape. */
  static void outline(Graphics2D graphics, Shape shape, Color colour, boolean dashed) {
    float width = Look.line().getLineWidth();
    float[] dashes = {4 * width, 3 * width};
    graphics.setStroke(
        dashed
            ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0)
            : new BasicStroke(width * 1.2f));
    graphics.setColor(colour);
    graphics.draw(shape);
  }

  /** The words in lines that fit; a word longer than a line stands alone. */
  static List<String> wrapped(String words, FontMetrics metrics, int room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.split("\\s+")) {
      String longer = line.length() == 0 ? word : line + " " + word;
      if (line.length() > 0 && metrics.stringWidth(longer) > room) {
        lines.add(line.toString());
        line = new StringBuilder(word);
      } else {
        line = new StringBuilder(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
