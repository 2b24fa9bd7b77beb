package org.rimebook.desk;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.Drawer;
import org.rimebook.desk.model.FindingWalk;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.ViewKeeper;
import org.rimebook.desk.model.Watched;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.page.EntryLane;
import org.rimebook.desk.page.MarkDesk;
import org.rimebook.desk.scatter.AgainstPanel;
import org.rimebook.desk.strip.SeasonOverview;
import org.rimebook.desk.strip.StripStack;
import org.rimebook.desk.table.ComparePanel;
import org.rimebook.desk.table.TotalsTable;
import org.rimebook.desk.table.WhyPanel;
import org.rimebook.desk.task.Tasks;
import org.rimebook.findings.Finding;

/** One season: strips with their lane and overview, the drawer under them, the side beside them. */
final class SeasonPane extends JPanel {

  private static final String NOTEBOOK = "notebook";
  private static final String WHY = "why";

  private final transient Workspace workspace;
  private final transient FindingWalk walk;
  private final StripStack stack;
  private final transient MarkDesk marks;
  private final Deck drawer = new Deck(0, 136);
  private final Deck side = new Deck(224, 0);
  private final JSplitPane upAndDown;
  private final JSplitPane sideways;
  private final transient Dividers dividers;

  SeasonPane(Workspace workspace, SeasonKeeper keeper, Tasks tasks, ViewKeeper views) {
    super(new BorderLayout());
    this.workspace = workspace;
    this.stack = new StripStack(workspace, tasks);
    this.walk = new FindingWalk(new Marking(workspace, keeper));
    this.marks = new MarkDesk(walk, stack, stack::wireLineAt, stack);
    stack.addMouseListener(marks.gesture());
    stack.addMouseMotionListener(marks.gesture());
    stack.addOverlay(marks.overlay());
    stack.addOverlay(marks.gesture());
    side.add(marks.page(), NOTEBOOK);
    StripsColumn strips =
        new StripsColumn(marks.lane(), stack, new SeasonOverview(workspace, stack));
    upAndDown = split(JSplitPane.VERTICAL_SPLIT, strips, drawer, 0.6);
    sideways = split(JSplitPane.HORIZONTAL_SPLIT, upAndDown, side, 0.76);
    this.dividers = new Dividers(views.dividers());
    dividers.keep("drawer", upAndDown, 0.6).keep("side", sideways, 0.76);
    add(sideways);
    add(new MarkSpace(marks.bar(), workspace), BorderLayout.SOUTH);
    drawer.setVisible(false);
  }

  /** Makes what may come a moment after the window does. */
  void furnish() {
    marks.page().furnish();
  }

  /**
   * Makes what a first picture needn't wait for: what slides in under the strips, and why.
   *
   * @return its commands
   */
  List<DeskAction> complete(SeasonKeeper keeper, Tasks tasks) {
    TotalsTable totals = new TotalsTable(workspace);
    AgainstPanel against = new AgainstPanel(workspace, tasks);
    ComparePanel compare = new ComparePanel(workspace, keeper, tasks);
    drawer.add(totals, Drawer.TOTALS.name());
    drawer.add(against, Drawer.AGAINST.name());
    drawer.add(compare, Drawer.COMPARE.name());
    side.add(new WhyPanel(workspace, tasks, walk::review), WHY);
    workspace.drawer().follow(this::show);
    workspace.asked().follow(asked -> side.show(asked.isPresent() ? WHY : NOTEBOOK));
    List<DeskAction> all = new ArrayList<>(totals.actions());
    all.addAll(against.actions());
    all.addAll(compare.actions());
    all.addAll(own());
    return all;
  }

  /** Keeps another divider, with those of the strips. */
  void keep(String name, JSplitPane pane, double first) {
    dividers.keep(name, pane, first);
  }

  /** Runs something whenever what was asked for shows in the strips or beside them. */
  void whenWanted(Runnable show) {
    workspace.drawer().watch(open -> show.run());
    workspace
        .asked()
        .watch(
            asked -> {
              if (asked.isPresent()) {
                show.run();
              }
            });
    walk.marking()
        .task()
        .watch(
            task -> {
              if (task.isPresent()) {
                show.run();
              }
            });
    Watched<Optional<Finding>> reviewed = new Watched<>(workspace.findings().get().reviewed());
    workspace.findings().watch(left -> reviewed.set(left.reviewed()));
    reviewed.watch(
        finding -> {
          if (finding.isPresent()) {
            show.run();
          }
        });
  }

  private static JSplitPane split(int way, JComponent first, JComponent second, double weight) {
    JSplitPane pane = new JSplitPane(way, true, first, second);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.setResizeWeight(weight);
    return pane;
  }

  private void show(Drawer open) {
    boolean closed = open == Drawer.CLOSED;
    drawer.setVisible(!closed);
    if (!closed) {
      drawer.show(open.name());
    }
    upAndDown.validate();
    dividers.place();
  }

  StripStack stack() {
    return stack;
  }

  EntryLane lane() {
    return marks.lane();
  }

  List<DeskAction> actions() {
    List<DeskAction> all = new ArrayList<>();
    all.addAll(stack.actions());
    all.addAll(marks.actions());
    return all;
  }

  private List<DeskAction> own() {
    List<DeskAction> all = new ArrayList<>();
    all.add(
        DeskAction.named(Group.VIEW, "Raw against derived", () -> toggle(Drawer.AGAINST))
            .saying("Opens or closes the scatters under the strips")
            .key("control D")
            .mnemonic('R')
            .when(this::open)
            .done());
    all.add(
        DeskAction.named(Group.TOTALS, "Close explanation", this::closeWhy)
            .saying("Back to the notebook")
            .key("shift W")
            .mnemonic('X')
            .when(() -> workspace.asked().get().isPresent())
            .done());
    return all;
  }

  private boolean open() {
    return workspace.opened().get().isPresent();
  }

  private void toggle(Drawer which) {
    workspace.drawer().set(workspace.drawer().get() == which ? Drawer.CLOSED : which);
  }

  private void closeWhy() {
    workspace.asked().set(Optional.empty());
  }
}
