package org.rimebook.desk.scatter;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.util.BitSet;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.against.Cloud;
import org.rimebook.desk.model.against.Grid;

/**
 * Draws the cells of a cloud: readings used as squares, the darker the more there are, and as
 * larger ones where they are alone; readings left out as crosses; selected ones as lozenges. What
 * lies outside the plot is an arrowhead at its edge.
 */
final class CloudPainter {

  private static final double FAINTEST = 0.45;
  private static final int SHADES = 8;

  private final Graphics2D graphics;
  private final Rectangle area;
  private final Grid grid;

  CloudPainter(Graphics2D graphics, Rectangle area, Grid grid) {
    this.graphics = graphics;
    this.area = area;
    this.grid = grid;
  }

  /** Edge of a cell in pixels. */
  static int cell() {
    return Look.px(2);
  }

  /** Middle of a cell. */
  int xOf(Cloud cloud, int index) {
    return area.x + (int) ((cloud.column(index) + 0.5) * area.width / grid.columns());
  }

  /** Middle of a cell. */
  int yOf(Cloud cloud, int index) {
    return area.y + area.height - (int) ((cloud.line(index) + 0.5) * area.height / grid.rows());
  }

  /**
   * Draws readings that are used.
   *
   * @param strength 1, or less to stand back
   */
  void used(Cloud cloud, Color colour, double strength) {
    // Squares lie on whole pixels; smoothing their edges would only take time.
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
    BitSet taken = taken(cloud);
    int[] shade = shades(cloud);
    // A colour is costly to set, so all cells of a shade are drawn together.
    for (int each = 0; each < SHADES; each++) {
      double full = each / (SHADES - 1.0);
      graphics.setColor(Look.faint(colour, strength * (FAINTEST + (1 - FAINTEST) * full)));
      for (int i = 0; i < cloud.size(); i++) {
        if (shade[i] == each) {
          reading(cloud, i, taken);
        }
      }
    }
    Backing.smooth(graphics);
  }

  private static int[] shades(Cloud cloud) {
    double scale = StrictMath.log1p(cloud.most());
    int[] shades = new int[cloud.size()];
    for (int i = 0; i < shades.length; i++) {
      double full = StrictMath.log1p(cloud.count(i)) / scale;
      shades[i] = (int) Math.round(full * (SHADES - 1));
    }
    return shades;
  }

  private void reading(Cloud cloud, int index, BitSet taken) {
    if (cloud.outside(index)) {
      arrowhead(cloud, index);
    } else {
      int edge = alone(cloud, index, taken) ? 2 * cell() : cell();
      square(xOf(cloud, index), yOf(cloud, index), edge);
    }
  }

  /** Draws readings that are left out. */
  void leftOut(Cloud cloud, Color colour) {
    graphics.setColor(colour);
    graphics.setStroke(new BasicStroke(Look.px(1)));
    int arm = Look.px(2);
    for (int i = 0; i < cloud.size(); i++) {
      if (cloud.outside(i)) {
        arrowhead(cloud, i);
        continue;
      }
      int x = xOf(cloud, i);
      int y = yOf(cloud, i);
      graphics.drawLine(x - arm, y - arm, x + arm, y + arm);
      graphics.drawLine(x - arm, y + arm, x + arm, y - arm);
    }
  }

  /** Draws readings that are selected. */
  void selected(Cloud cloud) {
    graphics.setColor(Look.accent());
    graphics.setStroke(new BasicStroke(Look.px(1)));
    int arm = Look.px(3);
    for (int i = 0; i < cloud.size(); i++) {
      int x = xOf(cloud, i);
      int y = yOf(cloud, i);
      graphics.drawPolygon(
          new int[] {x - arm, x, x + arm, x}, new int[] {y, y - arm, y, y + arm}, 4);
    }
  }

  private void square(int x, int y, int edge) {
    graphics.fillRect(x - edge / 2, y - edge / 2, edge, edge);
  }

  private static BitSet taken(Cloud cloud) {
    BitSet taken = new BitSet();
    int columns = cloud.grid().columns();
    for (int i = 0; i < cloud.size(); i++) {
      taken.set(cloud.line(i) * columns + cloud.column(i));
    }
    return taken;
  }

  private static boolean alone(Cloud cloud, int index, BitSet taken) {
    int columns = cloud.grid().columns();
    for (int line = cloud.line(index) - 1; line <= cloud.line(index) + 1; line++) {
      for (int column = cloud.column(index) - 1; column <= cloud.column(index) + 1; column++) {
        boolean self = line == cloud.line(index) && column == cloud.column(index);
        boolean inside = line >= 0 && column >= 0 && column < columns;
        if (!self && inside && taken.get(line * columns + column)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Points the way the readings lie. */
  private void arrowhead(Cloud cloud, int index) {
    int column = cloud.column(index);
    int line = cloud.line(index);
    int across = column == 0 ? -1 : column == grid.columns() - 1 ? 1 : 0;
    int up = line == 0 ? 1 : line == grid.rows() - 1 ? -1 : 0;
    int x = xOf(cloud, index);
    int y = yOf(cloud, index);
    int size = Look.px(4);
    if (across != 0) {
      int back = x - across * size;
      graphics.fillPolygon(new int[] {x, back, back}, new int[] {y, y - size, y + size}, 3);
    } else {
      int back = y - up * size;
      graphics.fillPolygon(new int[] {x, x - size, x + size}, new int[] {y, back, back}, 3);
    }
  }
}
