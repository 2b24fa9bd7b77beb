package org.rimebook.desk.strip;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.series.LinesAhead;
import org.rimebook.desk.task.Tasks;
import org.rimebook.station.Interval;

/**
 * The stack of strips on one time axis. It takes for itself the wheel and all presses that move the
 * view, resize a strip or choose a wire by its name, and consumes those; a plain press or drag of
 * the left button inside the plots is left alone, for marking. Follows the workspace; to be used
 * from the event thread.
 */
public final class StripStack extends JComponent implements StackGeometry {

  private final transient Workspace workspace;
  private final transient Strips strips;
  private final transient Picture picture = new Picture();
  private final transient EndLabels labels = new EndLabels();
  private final transient List<Overlay> overlays = new CopyOnWriteArrayList<>();
  private final transient List<Runnable> contentListeners = new CopyOnWriteArrayList<>();
  private final transient StackNavigation navigation;
  private final transient StackActions actions;
  private final transient NeighbourChoice neighbour;
  private boolean drawn;
  private final GoTo goTo;
  private final StripsPanel stripsPanel;

  /**
   * @param workspace what is shown
   * @param tasks runs what takes long
   */
  public StripStack(Workspace workspace, Tasks tasks) {
    this.workspace = workspace;
    setOpaque(true);
    setFocusable(true);
    updateUI();
    this.strips = new Strips(workspace, tasks, this::renewed);
    workspace.view().beside(() -> AxesThen.of(strips));
    this.navigation = new StackNavigation(workspace, this);
    this.goTo = new GoTo(workspace.view(), this);
    this.stripsPanel = new StripsPanel(workspace, this);
    add(goTo);
    add(stripsPanel);
    this.neighbour = new NeighbourChoice(workspace, tasks, this);
    this.actions = new StackActions(workspace, this);
    workspace.view().visible().watch(visible -> changed());
    workspace.strips().watch(settings -> changed());
    workspace.selection().watch(selection -> changed());
    workspace.cursorMs().watch(cursor -> repaint());
    workspace.draft().watch(draft -> repaint());
    getAccessibleContext().setAccessibleName("Strips");
  }

  /** Draws the first season that is opened from lines made elsewhere, if they are its. */
  public void expect(LinesAhead lines) {
    strips.expect(lines);
  }

  /** Draws something over the strips from now on, above what was added before. */
  public void addOverlay(Overlay overlay) {
    overlays.add(overlay);
    repaint();
  }

  /** Whether lines of the open season are on screen. */
  public boolean isDrawn() {
    return drawn;
  }

  /** The commands of the strips. */
  public List<DeskAction> actions() {
    return actions.all();
  }

  @Override
  public Rectangle plots() {
    return layoutNow().plots();
  }

  @Override
  public int xAt(long epochMs) {
    Rectangle plots = plots();
    Interval visible = workspace.view().visible().get();
    double share = (epochMs - visible.fromMs()) / (double) visible.lengthMs();
    return plots.x + (int) Math.round(plots.width * Math.max(-1, Math.min(2, share)));
  }

  @Override
  public long timeAt(int x) {
    Rectangle plots = plots();
    Interval visible = workspace.view().visible().get();
    return visible.fromMs()
        + Math.round((x - plots.x) * (double) visible.lengthMs() / Math.max(1, plots.width));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setBackground(Look.paper());
    if (picture != null) {
      picture.spoil();
    }
    repaint();
  }

  @Override
  public void doLayout() {
    Rectangle plots = plots();
    Dimension date = goTo.getPreferredSize();
    goTo.setBounds(
        plots.x + Look.px(8),
        plots.y + plots.height - date.height - Look.px(8),
        date.width,
        date.height);
    Dimension panel = stripsPanel.getPreferredSize();
    stripsPanel.setBounds(
        plots.x + plots.width - panel.width - Look.px(8),
        plots.y + Look.px(24),
        panel.width,
        panel.height);
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(Look.px(320), Look.px(160));
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

  /** Where the strips lie now. */
  StackLayout layoutNow() {
    return StackLayout.of(getSize(), shown().stream().map(s -> s.setting().share()).toList());
  }

  /** The strips on screen, from top to bottom. */
  List<Strips.Shown> shown() {
    return strips.fitting(shares -> StackLayout.fits(getSize(), shares));
  }

  /** The field to go to a date. */
  GoTo goTo() {
    return goTo;
  }

  /** Chooses the strips. */
  NeighbourChoice neighbour() {
    return neighbour;
  }

  StripsPanel stripsPanel() {
    return stripsPanel;
  }

  Strips strips() {
    return strips;
  }

  /** Number in the station sheet of the wire whose line passes a point, if any. */
  public OptionalInt wireLineAt(Point point) {
    StackLayout layout = layoutNow();
    int strip = layout.stripAt(point.y);
    return strip < 0 || strips.series().isEmpty()
        ? OptionalInt.empty()
        : new WireLines(strips.series().get(), this)
            .at(point, shown().get(strip), layout.strips().get(strip));
  }

  /** The wire whose name stands at a point, at a line's end. */
  Optional<String> wireAt(Point point) {
    return labels.wireAt(point);
  }

  /** Readings at an instant, a list for each strip on screen. */
  List<List<Content.Reading>> readingsAt(long epochMs) {
    return shown().stream().map(s -> s.plot().content().at(epochMs)).toList();
  }

  /** Station time. */
  ZoneOffset offset() {
    return workspace.opened().get().map(o -> o.season().sheet().utcOffset()).orElse(ZoneOffset.UTC);
  }

  /** Told whenever other lines are drawn. */
  void addContentListener(Runnable listener) {
    contentListeners.add(listener);
  }

  private void renewed() {
    drawn = drawn && !strips.shown().isEmpty();
    changed();
    contentListeners.forEach(Runnable::run);
  }

  private void changed() {
    picture.spoil();
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D onto = (Graphics2D) graphics.create();
    try {
      List<Strips.Shown> shown = shown();
      if (shown.isEmpty()) {
        drawn = false;
        empty(onto);
        return;
      }
      StackLayout layout = layoutNow();
      picture.paint(onto, this, drawing -> draw(drawing, shown, layout));
      drawn = true;
      selection(onto, layout);
      for (Overlay overlay : overlays) {
        overlay.paint(onto, this);
      }
      crossHair(onto, shown, layout);
      navigation.paint(onto);
    } finally {
      onto.dispose();
    }
  }

  private void draw(Graphics2D graphics, List<Strips.Shown> shown, StackLayout layout) {
    Interval visible = workspace.view().visible().get();
    Emphasis emphasis = emphasis();
    TimeRuler ruler = new TimeRuler(layout.plots(), visible, offset());
    labels.clear();
    for (int i = 0; i < shown.size(); i++) {
      Rectangle area = layout.strips().get(i);
      StripPlot plot = shown.get(i).plot();
      Rectangle device = ContentRenderer.onDevice(graphics.getTransform(), area);
      plot.look(visible, device.width, shown.get(i).setting().fits());
      Graphics2D onDevice = (Graphics2D) graphics.create();
      onDevice.setTransform(new AffineTransform());
      new Hatch(onDevice, graphics.getTransform().getScaleX())
          .paint(device, plot.content().covered());
      onDevice.dispose();
      ruler.grid(graphics, area);
      plot.paint(graphics, area, visible, emphasis);
      labels.paint(graphics, area, plot, emphasis);
    }
    ruler.paint(graphics);
    unseen(graphics, shown, layout.plots());
  }

  /** Names the strips there is no room for, where the times of a selection don't stand. */
  private void unseen(Graphics2D graphics, List<Strips.Shown> shown, Rectangle plots) {
    List<String> names =
        strips.shown().stream()
            .filter(strip -> !shown.contains(strip))
            .map(strip -> strip.setting().kind().words().toLowerCase(Locale.ROOT))
            .toList();
    if (!names.isEmpty() && workspace.selection().get().intervals().isEmpty()) {
      String words = "no room for " + String.join(", ", names);
      graphics.setFont(Look.text(0.9));
      if (graphics.getFontMetrics().stringWidth(words) + Look.px(8) > plots.width) {
        words = "no room for " + names.size() + " more";
      }
      int width = graphics.getFontMetrics().stringWidth(words) + Look.px(8);
      int height = graphics.getFontMetrics().getHeight();
      int left = plots.x + plots.width - width;
      int top = plots.y + plots.height - height;
      graphics.setColor(Look.faint(Look.paper(), 0.85));
      graphics.fillRect(left, top, width, height);
      graphics.setColor(Look.muted());
      graphics.drawString(words, left + Look.px(4), top + graphics.getFontMetrics().getAscent());
    }
  }

  private Emphasis emphasis() {
    return new Emphasis(workspace.selection().get().wires());
  }

  private void selection(Graphics2D graphics, StackLayout layout) {
    Rectangle plots = layout.plots();
    Color accent = Look.accent();
    for (Interval stretch : workspace.selection().get().intervals()) {
      int from = Math.max(plots.x, xAt(stretch.fromMs()));
      int to = Math.min(plots.x + plots.width, xAt(stretch.toMs()));
      if (to >= from) {
        graphics.setColor(Look.faint(accent, 0.14));
        graphics.fillRect(from, plots.y, Math.max(1, to - from), plots.height);
      }
    }
  }

  private void crossHair(Graphics2D graphics, List<Strips.Shown> shown, StackLayout layout) {
    OptionalLong cursor = workspace.cursorMs().get();
    Interval visible = workspace.view().visible().get();
    if (cursor.isEmpty() || !visible.contains(cursor.getAsLong())) {
      return;
    }
    long atMs = cursor.getAsLong();
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    CrossHair crossHair = new CrossHair(graphics, atMs, xAt(atMs));
    for (int i = 0; i < shown.size(); i++) {
      crossHair.paint(layout.strips().get(i), shown.get(i).plot(), emphasis());
    }
    crossHair.time(layout.plots(), offset(), visible.lengthMs() < 7_200_000);
  }

  private void empty(Graphics2D graphics) {
    graphics.setColor(getBackground());
    graphics.fillRect(0, 0, getWidth(), getHeight());
    graphics.setColor(Look.muted());
    graphics.setFont(Look.text(1));
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    String words = emptyWords();
    int width = graphics.getFontMetrics().stringWidth(words);
    graphics.drawString(words, Math.max(0, (getWidth() - width) / 2), getHeight() / 2);
  }

  private String emptyWords() {
    if (workspace.opened().get().isEmpty()) {
      return "Open a season to see its strips here.";
    }
    return strips.series().isEmpty()
        ? "Preparing the strips."
        : "All strips are hidden. Choose which to show with Strips in the View menu.";
  }
}
