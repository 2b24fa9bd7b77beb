package org.rimebook.desk.scatter;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Optional;
import java.util.Set;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.against.Brush;
import org.rimebook.desk.model.against.Cloud;
import org.rimebook.desk.model.against.Grid;
import org.rimebook.desk.model.against.Range;
import org.rimebook.desk.model.against.Scatter;

/** One scatter, with its axes, the reading pointed at, and the rectangle being drawn. */
final class ScatterPlot extends JComponent {

  private static final int RIGHT = 16;
  private static final int REACH = 10;
  private static final int NO_ROW = -1;

  private final AxisFrame frame = new AxisFrame(RIGHT);
  private final Backing readings = Backing.clear();
  private final Backing withSelected = Backing.opaque();
  private final EmptyWords empty = new EmptyWords();
  private Optional<ScatterScene> scene = Optional.empty();
  private Set<String> chosen = Set.of();
  private Optional<Rectangle> drawn = Optional.empty();
  private int markedRow = NO_ROW;

  /** A reading near a place. */
  record Hit(Scatter.Layer layer, int row) {}

  ScatterPlot(ScatterScene.Kind kind) {
    setFocusable(true);
    setOpaque(true);
    getAccessibleContext().setAccessibleName(kind.words());
  }

  /** Shows a scatter. */
  void show(ScatterScene shown) {
    boolean same = scene.filter(s -> s.scatter().sameButSelection(shown.scatter())).isPresent();
    scene = Optional.of(shown);
    if (same) {
      withSelected.drop();
      repaint();
      return;
    }
    frame.cover(shown.scatter().grid().x(), shown.scatter().grid().y());
    frame.label(shown.xLabel(), shown.yLabel());
    getAccessibleContext().setAccessibleDescription(shown.words().summary(shown.scatter()));
    renew();
  }

  /** Shows words instead. */
  void showNothing(String words) {
    scene = Optional.empty();
    empty.say(words);
    getAccessibleContext().setAccessibleDescription(words);
    renew();
  }

  /** Lets wires stand out; all when none is named. */
  void choose(Set<String> wires) {
    if (!chosen.equals(wires)) {
      chosen = Set.copyOf(wires);
      renew();
    }
  }

  private void renew() {
    readings.drop();
    withSelected.drop();
    repaint();
  }

  /** Marks the readings of a row of the record; −1 marks none. */
  void mark(int row) {
    if (row != markedRow) {
      markedRow = row;
      repaint();
    }
  }

  /** Shows the rectangle being drawn; empty when none is. */
  void draw(Optional<Rectangle> rectangle) {
    drawn = rectangle;
    repaint();
  }

  Optional<ScatterScene> scene() {
    return scene;
  }

  Rectangle area() {
    return frame.area(getSize());
  }

  /** Cells there is room for. */
  Scatter.Size room() {
    Rectangle area = area();
    int cell = CloudPainter.cell();
    return new Scatter.Size(Math.max(1, area.width / cell), Math.max(1, area.height / cell));
  }

  /** The reading nearest to a place, if one is near. */
  Optional<Hit> near(Point place) {
    Hit nearest = null;
    double least = (double) Look.px(REACH) * Look.px(REACH);
    if (scene.isEmpty()) {
      return Optional.empty();
    }
    CloudPainter places = places();
    for (Scatter.Layer layer : scene.get().scatter().layers()) {
      for (Cloud cloud : new Cloud[] {layer.used(), layer.leftOut()}) {
        for (int i = 0; i < cloud.size(); i++) {
          double distance = place.distanceSq(places.xOf(cloud, i), places.yOf(cloud, i));
          if (distance < least) {
            least = distance;
            nearest = new Hit(layer, cloud.row(i));
          }
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  private CloudPainter places() {
    return new CloudPainter(null, area(), scene.orElseThrow().scatter().grid());
  }

  /** What a rectangle of pixels covers; one that comes to the edge takes in what lies beyond. */
  Brush.Rectangle covered(Rectangle pixels) {
    Rectangle area = area();
    Grid grid = scene.orElseThrow().scatter().grid();
    Range x =
        span(grid.x(), new int[] {pixels.x - area.x, pixels.x + pixels.width - area.x}, area.width);
    int bottom = area.y + area.height;
    Range y =
        span(
            grid.y(),
            new int[] {bottom - pixels.y - pixels.height, bottom - pixels.y},
            area.height);
    return new Brush.Rectangle(x, y);
  }

  private static Range span(Range axis, int[] ends, int length) {
    double unit = (axis.to() - axis.from()) / length;
    double from = ends[0] <= 0 ? Double.NEGATIVE_INFINITY : axis.from() + ends[0] * unit;
    double to = ends[1] >= length ? Double.POSITIVE_INFINITY : axis.from() + ends[1] * unit;
    return new Range(from, to);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    Backing.smooth(g);
    // At a scale that isn't whole, what is kept may end within a pixel of the edge.
    paper(g);
    if (scene.isEmpty()) {
      empty.paint(g, getSize());
    } else {
      withSelected.paint(g, getSize(), this::paintSelected);
      paintMarked(g, scene.get());
    }
    paintDrawn(g);
    g.dispose();
  }

  private void paper(Graphics2D g) {
    g.setColor(Look.paper());
    g.fillRect(0, 0, getWidth(), getHeight());
  }

  /** What is selected changes more often than the readings, and what is pointed at yet more. */
  private void paintSelected(Graphics2D g) {
    paper(g);
    readings.paint(g, getSize(), this::paintScene);
    scene.orElseThrow().paintSelected(g, area());
  }

  private void paintScene(Graphics2D g) {
    frame.paint(g, getSize());
    Rectangle area = area();
    int edge = Look.px(4);
    g.clipRect(area.x - edge, area.y - edge, area.width + 2 * edge, area.height + 2 * edge);
    scene.orElseThrow().paint(g, area, chosen);
  }

  private void paintMarked(Graphics2D g, ScatterScene shown) {
    if (markedRow < 0) {
      return;
    }
    Rectangle area = area();
    Grid grid = shown.scatter().grid();
    g.setColor(Look.accent());
    g.setStroke(new BasicStroke(Look.px(2)));
    int radius = Look.px(5);
    for (Scatter.Layer layer : shown.scatter().layers()) {
      double x = layer.points().x(markedRow);
      double y = layer.points().y(markedRow);
      if (grid.holds(x, y)) {
        double shareX = (x - grid.x().from()) / (grid.x().to() - grid.x().from());
        double shareY = (y - grid.y().from()) / (grid.y().to() - grid.y().from());
        int atX = area.x + (int) (shareX * area.width);
        int atY = area.y + area.height - (int) (shareY * area.height);
        g.drawOval(atX - radius, atY - radius, 2 * radius, 2 * radius);
      }
    }
  }

  private void paintDrawn(Graphics2D g) {
    g.setColor(Look.accent());
    g.setStroke(new BasicStroke(Look.px(1)));
    if (isFocusOwner()) {
      g.drawRect(Look.px(1), Look.px(1), getWidth() - Look.px(3), getHeight() - Look.px(3));
    }
    if (drawn.isPresent()) {
      Rectangle box = drawn.get();
      g.draw(box);
      g.setColor(Look.faint(Look.accent(), 0.12));
      g.fill(box);
    }
  }

  @Override
  public void updateUI() {
    if (withSelected != null) {
      readings.drop();
      withSelected.drop();
    }
    super.updateUI();
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.CANVAS;
            }
          };
    }
    return accessibleContext;
  }
}
