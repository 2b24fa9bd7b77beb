package org.rimebook.desk.scatter;

import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Drawer;
import org.rimebook.desk.model.Faults;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.Selection;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.model.against.AgainstPicture;
import org.rimebook.desk.model.against.AgainstWords;
import org.rimebook.desk.model.against.Asked;
import org.rimebook.desk.model.against.Brush;
import org.rimebook.desk.model.against.Points;
import org.rimebook.desk.model.against.Scatter;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/**
 * Raw against derived, in the drawer under the strips: frequency against depth, wire against wire,
 * and what the sun does by hour of the day. Works only while its drawer is open.
 */
public final class AgainstPanel extends JPanel implements BrushControl.Listener {

  /** Width from which all three views stand side by side, at 100 %. */
  private static final int WIDE = 900;

  /** The cross-hair marks no reading further off [ms]; own choice. */
  private static final long NEAR_MS = 3_600_000;

  private final Workspace workspace;
  private final Tasks tasks;
  private final PictureMaker maker;
  private final Controls controls = new Controls(this::refresh);
  private final ScatterPlot curve = new ScatterPlot(ScatterScene.Kind.CURVE);
  private final ScatterPlot pair = new ScatterPlot(ScatterScene.Kind.PAIR);
  private final HourPlot hours = new HourPlot();
  private final List<JComponent> plots = List.of(curve, pair, hours);
  private final List<JLabel> lines = List.of(line(), line(), line());
  private final List<JPanel> boxes = new ArrayList<>();
  private Optional<Computed> computed = Optional.empty();
  private Optional<AgainstPicture> picture = Optional.empty();

  /**
   * @param workspace what is looked at and selected
   * @param tasks runs what takes long
   */
  public AgainstPanel(Workspace workspace, Tasks tasks) {
    super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[grow]", "[][grow]"));
    this.workspace = workspace;
    this.tasks = tasks;
    this.maker = new PictureMaker(tasks, this::show, this::tell);
    getAccessibleContext().setAccessibleName("Raw against derived");
    add(controls, "wrap, gapleft 8, gaptop 4");
    JPanel side = new JPanel(new MigLayout("insets 0, gap 8, fill, hidemode 3", "", "[grow]"));
    for (int i = 0; i < plots.size(); i++) {
      boxes.add(box(plots.get(i), lines.get(i)));
      side.add(boxes.get(i), "grow, push, sizegroupx views, wmin 0, hmin 0");
    }
    add(side, "grow, push, hmin 0, wmin 0");
    new BrushControl(curve, this);
    new BrushControl(pair, this);
    new HourControl(hours, this::pointAtHour, this::chooseHour);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            refresh();
          }
        });
    curve.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            ask();
          }
        });
    sayWhyNothing();
    follow();
  }

  private static JLabel line() {
    JLabel label = new JLabel(" ");
    label.putClientProperty("FlatLaf.styleClass", "small");
    return label;
  }

  private static JPanel box(JComponent plot, JLabel line) {
    JPanel box = new JPanel(new MigLayout("insets 0, gap 0, fill", "[grow]", "[grow][]"));
    box.add(plot, "grow, push, wrap, wmin 0, hmin 0");
    box.add(line, "growx, wmin 0, gapleft 8, gapright 8, gapbottom 2");
    return box;
  }

  private void follow() {
    workspace.opened().follow(this::opened);
    workspace
        .computed()
        .follow(
            now -> {
              // What a moving hand foresees is soon over; the scatter waits for what is written.
              if (now.isEmpty() || now.get().state() != Computed.State.FORESEEN) {
                computed = now;
                ask();
              }
            });
    workspace.drawer().watch(drawer -> refresh());
    workspace.selection().follow(this::selected);
    workspace.cursorMs().watch(this::markCursor);
    workspace
        .view()
        .visible()
        .watch(
            visible -> {
              if (controls.inViewOnly()) {
                ask();
              }
            });
  }

  /** The commands of this view. */
  public List<DeskAction> actions() {
    return List.of(
        focus(ScatterScene.Kind.CURVE.words(), 0, 'F'),
        focus(ScatterScene.Kind.PAIR.words(), 1, 'W'),
        focus("Departure by hour", 2, 'H'),
        DeskAction.named(Group.VIEW, "Scatter only what is in view", controls::toggleInView)
            .saying("Shows the readings of the stretch of time on screen, or of the season")
            .mnemonic('O')
            .when(this::isOpen)
            .done(),
        DeskAction.named(Group.VIEW, "Next pair of wires", controls::nextPair)
            .saying("Sets the next two wires against each other")
            .mnemonic('N')
            .when(() -> isOpen() && controls.hasPairs())
            .done());
  }

  private DeskAction focus(String name, int number, char letter) {
    return DeskAction.named(
            Group.VIEW,
            name,
            () -> {
              workspace.drawer().set(Drawer.AGAINST);
              controls.view(number);
              plots.get(number).requestFocusInWindow();
            })
        .saying("Opens the drawer of raw against derived at this view")
        .mnemonic(letter)
        .when(() -> workspace.opened().get().isPresent())
        .done();
  }

  private boolean isOpen() {
    return workspace.drawer().get() == Drawer.AGAINST && workspace.opened().get().isPresent();
  }

  private void opened(Optional<Opened> now) {
    boolean other =
        picture.isPresent()
            && now.map(o -> !o.folder().equals(picture.get().asked().opened().folder()))
                .orElse(true);
    if (other) {
      picture = Optional.empty();
      maker.forget();
      sayWhyNothing();
    }
    now.ifPresent(o -> controls.offer(o.season().sheet().wires()));
    ask();
  }

  private void sayWhyNothing() {
    String words = "The readings against each other stand here once a season is open.";
    curve.showNothing(words);
    pair.showNothing("");
    hours.showNothing("");
    lines.forEach(label -> label.setText(" "));
  }

  private void selected(Selection now) {
    curve.choose(now.wires());
    pair.choose(now.wires());
    hours.choose(now.wires());
    hours.selected(HourPlot.NO_HOUR);
    ask();
  }

  /** Arranges the views by the room there is, and has them drawn. */
  private void refresh() {
    boolean wide = getWidth() >= Look.px(WIDE);
    controls.offerViews(!wide);
    for (int i = 0; i < boxes.size(); i++) {
      boxes.get(i).setVisible(wide || i == controls.view());
    }
    revalidate();
    ask();
  }

  private void ask() {
    Optional<Opened> now = workspace.opened().get();
    if (!isOpen() || now.isEmpty()) {
      return;
    }
    Interval within = controls.inViewOnly() ? workspace.view().visible().get() : now.get().whole();
    maker.ask(
        new Asked(
            now.get(),
            computed,
            within,
            workspace.selection().get().intervals(),
            controls.pair(),
            new Asked.Room(curve.room(), pair.room())));
  }

  private void show(AgainstPicture made) {
    picture = Optional.of(made);
    curve.show(new ScatterScene(made, made.curve(), ScatterScene.Kind.CURVE));
    made.pair()
        .ifPresentOrElse(
            scatter -> pair.show(new ScatterScene(made, scatter, ScatterScene.Kind.PAIR)),
            () ->
                pair.showNothing("Two wires are set against each other here; this gauge has one."));
    if (made.sun().filter(sun -> !sun.days().isEmpty()).isPresent()) {
      hours.show(made);
    } else {
      hours.showNothing(whyNoSun(made));
    }
    sayLines();
  }

  private static String whyNoSun(AgainstPicture made) {
    if (made.readings().wires().size() < 2) {
      return "Each wire's departure from the mean of all stands here; this gauge has one wire.";
    }
    return made.sun().isEmpty()
        ? "Waits for the catch, which tells the dry days."
        : "No day here is dry from midnight to midnight with readings of all wires in every hour."
            + " Show the whole season, or look further.";
  }

  private void sayLines() {
    picture.ifPresent(
        shown -> {
          AgainstWords words = new AgainstWords(shown.readings());
          lines.get(0).setText(words.furthestOff(shown.curve()) + " ");
          lines.get(1).setText(shown.pair().map(words::furthestOff).orElse("") + " ");
          lines.get(2).setText(shown.sun().map(words::summary).orElse("") + " ");
        });
  }

  private void tell(Throwable fault) {
    workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(fault)));
  }

  private void markCursor(OptionalLong cursorMs) {
    int row = -1;
    if (cursorMs.isPresent() && picture.isPresent()) {
      row = nearest(picture.get().readings().record(), cursorMs.getAsLong());
    }
    curve.mark(row);
    pair.mark(row);
  }

  private static int nearest(SeasonRecord record, long ms) {
    int after = record.firstRowAtOrAfter(ms);
    int nearest = after;
    boolean beforeIsNearer =
        after == record.size()
            || after > 0 && ms - record.stampMs(after - 1) < record.stampMs(after) - ms;
    if (beforeIsNearer) {
      nearest = after - 1;
    }
    return Math.abs(record.stampMs(nearest) - ms) <= NEAR_MS ? nearest : -1;
  }

  @Override
  public void pointed(ScatterPlot plot, Optional<ScatterPlot.Hit> hit) {
    Optional<ScatterScene> scene = plot.scene();
    if (scene.isEmpty()) {
      return;
    }
    if (hit.isEmpty()) {
      sayLines();
      workspace.cursorMs().set(OptionalLong.empty());
      return;
    }
    int row = hit.get().row();
    lines.get(plots.indexOf(plot)).setText(scene.get().reading(hit.get().layer(), row));
    SeasonRecord record = scene.get().picture().readings().record();
    workspace.cursorMs().set(OptionalLong.of(record.stampMs(row)));
  }

  @Override
  public void brushed(ScatterPlot plot, Rectangle pixels, boolean adding) {
    ScatterScene scene = plot.scene().orElseThrow();
    Brush.Rectangle rectangle = plot.covered(pixels);
    List<Points> points =
        scene.scatter().layers().stream()
            .filter(layer -> scene.standsOut(layer, workspace.selection().get().wires()))
            .map(Scatter.Layer::points)
            .toList();
    SeasonRecord record = scene.picture().readings().record();
    tasks.run(
        Lane.BRUSH,
        "Finding the readings",
        progress -> Brush.over(points, rectangle, scene.scatter().span(), record),
        found -> select(found, adding),
        this::tell);
  }

  private void select(Brush.Found found, boolean adding) {
    List<Interval> stretches = new ArrayList<>(found.stretches());
    if (adding) {
      stretches.addAll(workspace.selection().get().intervals());
    }
    workspace.selection().set(workspace.selection().get().with(stretches));
    boolean all = found.readings() > 0 && found.found() <= found.stretches().size();
    Notice.Weight weight = all ? Notice.Weight.QUIET : Notice.Weight.NOTE;
    workspace.notice().set(new Notice(weight, found.words()));
  }

  @Override
  public void givenUp() {
    workspace.selection().set(workspace.selection().get().with(List.of()));
  }

  private void pointAtHour(int hour) {
    Optional<AgainstPicture> shown = hours.picture();
    if (hour == HourPlot.NO_HOUR || shown.isEmpty()) {
      sayLines();
      return;
    }
    AgainstWords words = new AgainstWords(shown.get().readings());
    lines.get(2).setText(words.hour(shown.get().sun().orElseThrow(), hour));
  }

  private void chooseHour(int hour) {
    if (hour == HourPlot.NO_HOUR) {
      givenUp();
      return;
    }
    Interval visible = workspace.view().visible().get();
    List<Interval> found =
        hours.picture().orElseThrow().sun().orElseThrow().hourOfDays(hour).stream()
            .filter(visible::overlaps)
            .toList();
    workspace.selection().set(workspace.selection().get().with(found));
    hours.selected(hour);
    String what = AgainstWords.hours(hour) + " on " + found.size() + " dry days in view selected";
    workspace.notice().set(new Notice(Notice.Weight.QUIET, what));
  }
}
