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
    Stamps stamps = new Stamps(graphics);
    // A colour is costly to set, so all cells of a shade are drawn together.
    for (int each = 0; each < SHADES; each++) {
      double full = each / (SHADES - 1.0);
      stamps.colour(Look.faint(colour, strength * (FAINTEST + (1 - FAINTEST) * full)));
      for (int i = 0; i < cloud.size(); i++) {
        if (shade[i] == each) {
          stamps.set(reading(cloud, i, taken), xOf(cloud, i), yOf(cloud, i));
        }
      }
    }
    stamps.dispose();
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

  private Stamps.Mark reading(Cloud cloud, int index, BitSet taken) {
    if (cloud.outside(index)) {
      return arrowhead(cloud, index);
    }
    return new Square(alone(cloud, index, taken) ? 2 * cell() : cell());
  }

  /** Draws readings that are left out. */
  void leftOut(Cloud cloud, Color colour) {
    graphics.setColor(colour);
    graphics.setStroke(new BasicStroke(Look.px(1)));
    int arm = Look.px(2);
    for (int i = 0; i < cloud.size(); i++) {
      int x = xOf(cloud, i);
      int y = yOf(cloud, i);
      if (cloud.outside(i)) {
        Graphics2D there = (Graphics2D) graphics.create();
        there.translate(x, y);
        arrowhead(cloud, i).draw(there);
        there.dispose();
        continue;
      }
      graphics.drawLine(x - arm, y - arm, x + arm, y + arm);
      graphics.drawLine(x - arm, y + arm, x + arm, y - arm);
    }
  }

  /** Draws readings that are selected. */
  void selected(Cloud cloud) {
    graphics.setStroke(new BasicStroke(Look.px(1)));
    Stamps stamps = new Stamps(graphics);
    stamps.colour(Look.accent());
    Lozenge lozenge = new Lozenge(Look.px(3));
    for (int i = 0; i < cloud.size(); i++) {
      stamps.set(lozenge, xOf(cloud, i), yOf(cloud, i));
    }
    stamps.dispose();
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
  private Arrowhead arrowhead(Cloud cloud, int index) {
    int column = cloud.column(index);
    int line = cloud.line(index);
    int across = column == 0 ? -1 : column == grid.columns() - 1 ? 1 : 0;
    int up = line == 0 ? 1 : line == grid.rows() - 1 ? -1 : 0;
    return new Arrowhead(across, across == 0 ? up : 0, Look.px(4));
  }

  private record Square(int edge) implements Stamps.Mark {
    @Override
    public void draw(Graphics2D graphics) {
      graphics.fillRect(-(edge / 2), -(edge / 2), edge, edge);
    }

    @Override
    public int reach() {
      return edge;
    }
  }

  private record Lozenge(int arm) implements Stamps.Mark {
    @Override
    public void draw(Graphics2D graphics) {
      graphics.drawPolygon(new int[] {-arm, 0, arm, 0}, new int[] {0, -arm, 0, arm}, 4);
    }

    @Override
    public int reach() {
      return 2 * arm;
    }
  }

  /** With its tip at the origin; up is against the way y goes on screen. */
  private record Arrowhead(int across, int up, int size) implements Stamps.Mark {
    @Override
    public void draw(Graphics2D graphics) {
      if (across != 0) {
        int back = -across * size;
        graphics.fillPolygon(new int[] {0, back, back}, new int[] {0, -size, size}, 3);
      } else {
        int back = -up * size;
        graphics.fillPolygon(new int[] {0, -size, size}, new int[] {0, back, back}, 3);
      }
    }

    @Override
    public int reach() {
      return size;
    }
  }
}
