package org.rimebook.desk.table;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.rimebook.desk.look.Look;
import org.rimebook.totals.Quality;

/**
 * The shape of a quality, told apart without colour: round when the gauge or the analyst stands for
 * it, pointed when it is to be doubted, a cross when there is nothing; the emptier, the less is
 * measured.
 */
final class QualityMark {

  private QualityMark() {}

  /** Draws it into a square in the colour set. */
  static void draw(Graphics2D graphics, Quality quality, double x, double y, double size) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setStroke(new BasicStroke(Look.line().getLineWidth() * 1.1f));
    double inset = size * 0.12;
    Shape disc = new Ellipse2D.Double(x + inset, y + inset, size - 2 * inset, size - 2 * inset);
    Rectangle2D left = new Rectangle2D.Double(x, y, size / 2, size);
    switch (quality) {
      case GOOD -> fill(g, disc);
      case UNCHECKED -> half(g, disc, left);
      case ESTIMATE -> g.draw(disc);
      case SUSPECT -> g.draw(diamond(x, y, size));
      case POOR -> half(g, diamond(x, y, size), left);
      case MISSING -> cross(g, x + inset, y + inset, size - 2 * inset);
    }
    g.dispose();
  }

  private static void fill(Graphics2D g, Shape shape) {
    g.fill(shape);
    g.draw(shape);
  }

  private static void half(Graphics2D g, Shape shape, Rectangle2D part) {
    g.draw(shape);
    g.clip(part);
    g.fill(shape);
  }

  private static Shape diamond(double x, double y, double size) {
    Path2D path = new Path2D.Double();
    path.moveTo(x + size / 2, y);
    path.lineTo(x + size, y + size / 2);
    path.lineTo(x + size / 2, y + size);
    path.lineTo(x, y + size / 2);
    path.closePath();
    return path;
  }

  private static void cross(Graphics2D g, double x, double y, double size) {
    g.draw(new Line2D.Double(x, y, x + size, y + size));
    g.draw(new Line2D.Double(x, y + size, x + size, y));
  }
}
