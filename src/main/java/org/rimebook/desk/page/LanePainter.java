package org.rimebook.desk.page;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.RoundRectangle2D;
import org.rimebook.desk.look.Look;

/** Draws one span of the lane. */
final class LanePainter {

  private LanePainter() {}

  /**
   * Draws a span.
   *
   * @param room where its word may stand
   * @param plots what of the lane lies above the strips
   * @param chosenId id of the entry that is selected
   */
  static void paint(
      Graphics2D graphics,
      LaneLayout.Placed placed,
      Rectangle room,
      Rectangle plots,
      String chosenId) {
    Rectangle box = placed.box().intersection(grown(plots));
    boolean found = placed.span().finding().isPresent();
    boolean chosen = !found && placed.span().entry().header().id().equals(chosenId);
    double arc = Look.px(4);
    RoundRectangle2D shape =
        new RoundRectangle2D.Double(
            box.x + 0.5, box.y + 0.5, box.width - 1.0, box.height - 1.0, arc, arc);
    graphics.setColor(Look.paper());
    graphics.fill(shape);
    if (!found) {
      graphics.setColor(Look.faint(Look.ink(), placed.span().leavesOut() ? 0.05 : 0.09));
      graphics.fill(shape);
    }
    if (placed.span().leavesOut()) {
      Ink.hatch(graphics, box, Look.faint(Look.ink(), 0.16));
    }
    boolean marked = chosen || placed.span().drafted();
    Ink.outline(
        graphics,
        shape,
        marked ? Look.accent() : Look.faint(Look.ink(), found ? 0.8 : 0.35),
        found || placed.span().drafted());
    if (marked) {
      grips(graphics, placed.box());
    }
    word(graphics, placed, room.intersection(plots));
  }

  private static void grips(Graphics2D graphics, Rectangle box) {
    if (box.width >= Look.px(14)) {
      int middle = box.y + box.height / 2;
      Ink.grip(graphics, box.x, middle, box.height - Look.px(6));
      Ink.grip(graphics, box.x + box.width, middle, box.height - Look.px(6));
    }
  }

  private static void word(Graphics2D graphics, LaneLayout.Placed placed, Rectangle seen) {
    graphics.setFont(Look.text(0.92));
    FontMetrics metrics = graphics.getFontMetrics();
    int pad = Look.px(6);
    String word = placed.span().word();
    String fits = Ink.elided(word, metrics, seen.width - 2 * pad);
    if (!fits.isEmpty()) {
      int x = seen.x + pad;
      int y = seen.y + (seen.height - metrics.getHeight()) / 2 + metrics.getAscent();
      if (placed.span().leavesOut()) {
        graphics.setColor(Look.faint(Look.paper(), 0.8));
        graphics.fillRect(
            x - pad / 2, seen.y + 2, metrics.stringWidth(fits) + pad, seen.height - 4);
      }
      graphics.setColor(Look.ink());
      graphics.drawString(fits, x, y);
    }
  }

  /** The plots and a little more, so that ends outside aren't drawn as edges. */
  private static Rectangle grown(Rectangle plots) {
    Rectangle more = new Rectangle(plots);
    more.grow(Look.px(8), 0);
    return more;
  }
}
