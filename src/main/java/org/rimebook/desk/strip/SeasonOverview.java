package org.rimebook.desk.strip;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.model.FindingsLeft;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.series.Columns;
import org.rimebook.desk.series.Pyramid;
import org.rimebook.desk.series.SeasonSeries;
import org.rimebook.desk.series.TraceSeries;
import org.rimebook.findings.Finding;
import org.rimebook.station.Interval;

/**
 * The whole season, thin: the bucket's depth (a wire's before it is computed) and the catch added
 * up, with the view as a window that can be dragged, resized by its edges, and drawn anew. Its left
 * and right are those of the strips.
 */
public final class SeasonOverview extends JComponent {

  private final transient Workspace workspace;
  private final transient StripStack stack;
  private final transient Picture picture = new Picture();

  /**
   * @param workspace what is shown
   * @param stack the strips, whose lines it draws
   */
  public SeasonOverview(Workspace workspace, StripStack stack) {
    this.workspace = workspace;
    this.stack = stack;
    setOpaque(true);
    setFocusable(false);
    updateUI();
    stack.addContentListener(this::changed);
    workspace.view().visible().watch(visible -> repaint());
    workspace.selection().watch(selection -> repaint());
    workspace.findings().watch(left -> repaint());
    WindowDrag drag = new WindowDrag(workspace.view(), this);
    addMouseListener(drag);
    addMouseMotionListener(drag);
    setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(Look.px(320), Look.px(64));
  }

  @Override
  public void updateUI() {
    setBackground(Look.paper());
    if (picture != null) {
      changed();
    }
  }

  /** Where an instant of the season lies. */
  int xAt(long epochMs) {
    Rectangle plot = plot();
    Interval whole = workspace.view().whole();
    double share = (epochMs - whole.fromMs()) / (double) whole.lengthMs();
    return plot.x + (int) Math.round(plot.width * Math.max(0, Math.min(1, share)));
  }

  /** The instant at a place [ms since epoch]. */
  long timeAt(int x) {
    Rectangle plot = plot();
    Interval whole = workspace.view().whole();
    double share = (x - plot.x) / (double) Math.max(1, plot.width);
    return whole.fromMs() + Math.round(Math.max(0, Math.min(1, share)) * whole.lengthMs());
  }

  private Rectangle plot() {
    int left = StackLayout.left();
    int top = Look.px(4);
    int width = Math.max(1, getWidth() - left - StackLayout.right());
    return new Rectangle(left, top, width, Math.max(1, getHeight() - top - Look.px(18)));
  }

  private void changed() {
    picture.spoil();
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D onto = (Graphics2D) graphics.create();
    try {
      picture.paint(onto, this, this::draw);
      if (workspace.opened().get().isPresent()) {
        selected(onto);
        window(onto);
        found(onto);
      }
    } finally {
      onto.dispose();
    }
  }

  private void draw(Graphics2D graphics) {
    if (workspace.opened().get().isEmpty()) {
      return;
    }
    Rectangle plot = plot();
    Interval whole = workspace.view().whole();
    new TimeRuler(plot, whole, stack.offset()).months(graphics);
    Graphics2D device = (Graphics2D) graphics.create();
    AffineTransform toDevice = graphics.getTransform();
    Rectangle onDevice = ContentRenderer.onDevice(toDevice, plot);
    device.setTransform(new AffineTransform());
    device.clip(onDevice);
    for (Line line : lines()) {
      Columns columns = new Columns(line.pyramid());
      columns.look(whole, onDevice.width);
      Extent extent = TraceContent.extent(columns);
      if (!extent.isEmpty()) {
        Extent padded = extent.padded(0.05, 1);
        Canvas canvas =
            new Canvas(onDevice, whole, padded.least(), padded.most(), toDevice.getScaleX());
        device.setColor(line.colour());
        new TracePainter(device, canvas).line(columns, new BasicStroke(canvas.thick(1)));
      }
    }
    device.dispose();
  }

  private record Line(Pyramid pyramid, Color colour) {}

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    Optional<SeasonSeries> series = stack.strips().series();
    series.ifPresent(
        s -> {
          List<TraceSeries> depths = s.lines().get(Kind.DEPTH);
          TraceSeries last = depths.get(depths.size() - 1);
          lines.add(new Line(last.used(), Emphasis.mixed(Look.ink(), Look.paper(), 0.35)));
        });
    stack.strips().caught().ifPresent(caught -> lines.add(new Line(caught.pyramid(), Look.ink())));
    return lines;
  }

  /** A tick at the foot for each stretch selected. */
  private void selected(Graphics2D graphics) {
    Rectangle plot = plot();
    graphics.setColor(Look.accent());
    for (Interval stretch : workspace.selection().get().intervals()) {
      int from = xAt(stretch.fromMs());
      int width = Math.max(Look.px(2), xAt(stretch.toMs()) - from);
      graphics.fillRect(from, plot.y + plot.height - Look.px(3), width, Look.px(3));
    }
  }

  /** A pointer at the top for each finding left; the one under review is larger, and filled. */
  private void found(Graphics2D graphics) {
    FindingsLeft left = workspace.findings().get();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setStroke(new BasicStroke(Look.px(1)));
    int top = plot().y;
    for (Finding finding : left.open()) {
      boolean reviewed = left.reviews(finding);
      int half = Look.px(reviewed ? 5 : 3);
      int x = xAt(finding.span().fromMs() + finding.span().lengthMs() / 2);
      Polygon pointer =
          new Polygon(new int[] {x - half, x + half, x}, new int[] {top, top, top + 2 * half}, 3);
      graphics.setColor(reviewed ? Look.accent() : Look.paper());
      graphics.fill(pointer);
      graphics.setColor(reviewed ? Look.accent() : Look.ink());
      graphics.draw(pointer);
    }
  }

  private void window(Graphics2D graphics) {
    Rectangle plot = plot();
    Rectangle window = window();
    graphics.setColor(Look.faint(getBackground(), 0.62));
    graphics.fillRect(plot.x, plot.y, window.x - plot.x, plot.height);
    int right = window.x + window.width;
    graphics.fillRect(right, plot.y, plot.x + plot.width - right, plot.height);
    graphics.setColor(Look.accent());
    graphics.setStroke(new BasicStroke(Look.px(1)));
    graphics.draw(new Rectangle2D.Double(window.x, window.y, window.width - 1, window.height - 1));
    int grip = Look.px(3);
    int height = Math.min(plot.height, Look.px(16));
    int top = plot.y + (plot.height - height) / 2;
    graphics.fillRect(window.x - grip / 2, top, grip, height);
    graphics.fillRect(right - 1 - grip / 2, top, grip, height);
  }

  /** Where the view lies on the season; never too narrow to be seen. */
  Rectangle window() {
    Rectangle plot = plot();
    Interval visible = workspace.view().visible().get();
    int from = xAt(visible.fromMs());
    int width = Math.max(Look.px(4), xAt(visible.toMs()) - from);
    int left = Math.min(from, plot.x + plot.width - width);
    return new Rectangle(left, plot.y, width, plot.height);
  }
}
