package org.rimebook.desk.scatter;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
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
import org.rimebook.desk.model.against.Asked;
import org.rimebook.desk.task.Tasks;
import org.rimebook.station.Interval;

/**
 * Raw against derived, in the drawer under the strips: frequency against depth, wire against wire,
 * and what the sun does by hour of the day. Works only while its drawer is open.
 */
public final class AgainstPanel extends JPanel {

  /** Width from which all three views stand side by side, at 100 %. */
  private static final int WIDE = 900;

  private final Workspace workspace;
  private final PictureMaker maker;
  private final Controls controls = new Controls(this::refresh);
  private final Views views = new Views();
  private Optional<Computed> computed = Optional.empty();

  /**
   * @param workspace what is looked at and selected
   * @param tasks runs what takes long
   */
  public AgainstPanel(Workspace workspace, Tasks tasks) {
    super(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[grow]", "[][grow]"));
    this.workspace = workspace;
    this.maker =
        new PictureMaker(
            tasks,
            views::show,
            fault -> workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(fault))));
    getAccessibleContext().setAccessibleName("Raw against derived");
    add(controls, "wrap, gapleft 8, gaptop 4, wmin 0");
    add(views, "grow, push, hmin 0, wmin 0");
    new Linking(workspace, tasks, views);
    followSize();
    follow();
  }

  private void followSize() {
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            refresh();
          }
        });
    ComponentAdapter room =
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            ask();
          }
        };
    views.curve().addComponentListener(room);
    views.pair().addComponentListener(room);
  }

  private void follow() {
    workspace.opened().follow(this::opened);
    workspace.computed().follow(this::computed);
    workspace.drawer().watch(drawer -> refresh());
    workspace.selection().follow(this::selected);
    workspace.view().visible().watch(this::moved);
  }

  /** The commands of this view. */
  public List<DeskAction> actions() {
    return List.of(
        focus(ScatterScene.Kind.CURVE.words(), 0, 'F'),
        focus(ScatterScene.Kind.PAIR.words(), 1, 'W'),
        focus(Controls.BY_HOUR, 2, 'H'),
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
    return DeskAction.named(Group.VIEW, name, () -> goTo(number))
        .saying("Opens the drawer of raw against derived at this view")
        .mnemonic(letter)
        .when(() -> workspace.opened().get().isPresent())
        .done();
  }

  private void goTo(int number) {
    workspace.drawer().set(Drawer.AGAINST);
    controls.view(number);
    views.focus(number);
  }

  private boolean isOpen() {
    return workspace.drawer().get() == Drawer.AGAINST && workspace.opened().get().isPresent();
  }

  private void opened(Optional<Opened> now) {
    boolean another =
        views
            .picture()
            .map(shown -> shown.asked().opened().folder())
            .filter(folder -> now.filter(o -> o.folder().equals(folder)).isEmpty())
            .isPresent();
    if (another) {
      maker.forget();
      views.showNothing();
    }
    now.ifPresent(o -> controls.offer(o.season().sheet().wires()));
    ask();
  }

  /** What a moving hand foresees is soon over; the scatter waits for what is written. */
  private void computed(Optional<Computed> now) {
    if (now.isEmpty() || now.get().state() != Computed.State.FORESEEN) {
      computed = now;
      ask();
    }
  }

  private void selected(Selection now) {
    views.choose(now.wires());
    views.hours().selected(HourPlot.NO_HOUR);
    ask();
  }

  private void moved(Interval visible) {
    if (controls.inViewOnly()) {
      ask();
    }
  }

  /** Arranges the views by the room there is, and has them drawn. */
  private void refresh() {
    boolean wide = getWidth() >= Look.px(WIDE);
    controls.offerViews(!wide);
    views.arrange(wide, controls.view());
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
            views.room()));
  }
}
