package org.rimebook.desk.strip;

import java.util.List;
import java.util.OptionalLong;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.CatchForm;
import org.rimebook.desk.model.StripSetting;
import org.rimebook.desk.model.TimeView;
import org.rimebook.desk.model.Workspace;
import org.rimebook.station.Interval;

/** The commands of the strips. */
final class StackActions {

  private static final double ZOOM = 0.5;
  private static final double PAN = 0.1;
  private static final long DAY_MS = 86_400_000;

  private final Workspace workspace;
  private final StripStack stack;
  private final List<DeskAction> all;

  StackActions(Workspace workspace, StripStack stack) {
    this.workspace = workspace;
    this.stack = stack;
    TimeView view = workspace.view();
    this.all =
        List.of(
            action("Zoom in", "typed +", 'Z', () -> zoom(ZOOM)),
            action("Zoom out", "typed -", 'U', () -> zoom(1 / ZOOM)),
            action("Earlier", "LEFT", 'E', () -> pan(-PAN)),
            action("Later", "RIGHT", 'L', () -> pan(PAN)),
            action("Earlier by a screen", "shift LEFT", 'I', () -> pan(-1)),
            action("Later by a screen", "shift RIGHT", 'T', () -> pan(1)),
            action("Fit a day", "1", 'D', () -> fit(1)),
            action("Fit a week", "2", 'K', () -> fit(7)),
            action("Fit the season", "3", 'S', () -> view.go(view.whole())),
            DeskAction.named(Group.VIEW, "Back to the view before", view::back)
                .key("alt LEFT")
                .mnemonic('B')
                .when(view::canGoBack)
                .done(),
            DeskAction.named(Group.VIEW, "Forward again", view::forward)
                .key("alt RIGHT")
                .mnemonic('G')
                .when(view::canGoForward)
                .done(),
            action("Go to a date", "control G", 'A', () -> stack.goTo().toggle()),
            action("Choose the strips", "S", 'P', () -> stack.stripsPanel().toggle()),
            action("Neighbour's daily catch", "shift N", 'H', () -> stack.neighbour().toggle()),
            action("Catch accumulated, by hours or by days", "C", 'C', this::nextForm),
            action("Axes fit what is in view, or stay", "F", 'X', this::fitAll));
    view.visible().watch(visible -> all.forEach(DeskAction::refresh));
    workspace.opened().watch(opened -> all.forEach(DeskAction::refresh));
  }

  List<DeskAction> all() {
    return all;
  }

  private DeskAction action(String name, String key, char mnemonic, Runnable deed) {
    return DeskAction.named(Group.VIEW, name, deed)
        .key(key)
        .mnemonic(mnemonic)
        .when(() -> workspace.opened().get().isPresent())
        .done();
  }

  private long centreMs() {
    Interval visible = workspace.view().visible().get();
    OptionalLong cursor = workspace.cursorMs().get();
    return cursor.isPresent() && visible.contains(cursor.getAsLong())
        ? cursor.getAsLong()
        : visible.fromMs() + visible.lengthMs() / 2;
  }

  private void zoom(double factor) {
    workspace.view().remember();
    workspace.view().zoom(centreMs(), factor);
  }

  private void pan(double share) {
    workspace.view().remember();
    Interval visible = workspace.view().visible().get();
    workspace.view().pan(Math.round(share * visible.lengthMs()));
  }

  /** Shows whole days of station time, the one in the middle of the view in their middle. */
  private void fit(int days) {
    long shiftMs = stack.offset().getTotalSeconds() * 1000L;
    long day = Math.floorDiv(centreMs() + shiftMs, DAY_MS) - days / 2;
    long fromMs = day * DAY_MS - shiftMs;
    workspace.view().go(new Interval(fromMs, fromMs + days * DAY_MS));
  }

  private void nextForm() {
    CatchForm[] forms = CatchForm.values();
    int next = (workspace.catchForm().get().ordinal() + 1) % forms.length;
    workspace.catchForm().set(forms[next]);
  }

  private void fitAll() {
    boolean fits = workspace.strips().get().stream().allMatch(StripSetting::fits);
    stack.strips().fitAll(!fits);
  }
}
