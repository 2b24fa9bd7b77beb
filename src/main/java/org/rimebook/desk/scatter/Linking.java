package org.rimebook.desk.scatter;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.rimebook.accumulation.SunMark;
import org.rimebook.desk.model.Faults;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.model.against.AgainstPicture;
import org.rimebook.desk.model.against.AgainstWords;
import org.rimebook.desk.model.against.Brush;
import org.rimebook.desk.model.against.Points;
import org.rimebook.desk.model.against.Scatter;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/** Ties what is pointed at and brushed in the views to what is selected everywhere. */
final class Linking implements BrushControl.Listener {

  private final Workspace workspace;
  private final Tasks tasks;
  private final Views views;

  Linking(Workspace workspace, Tasks tasks, Views views) {
    this.workspace = workspace;
    this.tasks = tasks;
    this.views = views;
    new BrushControl(views.curve(), this);
    new BrushControl(views.pair(), this);
    new HourControl(views.hours(), this::pointAtHour, this::chooseHour);
    workspace.cursorMs().watch(this::markCursor);
  }

  private void markCursor(OptionalLong cursorMs) {
    int row = -1;
    if (cursorMs.isPresent() && views.picture().isPresent()) {
      row = views.picture().get().readings().rowNear(cursorMs.getAsLong()).orElse(-1);
    }
    views.mark(row);
  }

  @Override
  public void pointed(ScatterPlot plot, Optional<ScatterPlot.Hit> hit) {
    Optional<ScatterScene> scene = plot.scene();
    if (scene.isEmpty()) {
      return;
    }
    if (hit.isEmpty()) {
      views.summarise();
      workspace.cursorMs().set(OptionalLong.empty());
      return;
    }
    int row = hit.get().row();
    views.say(plot, scene.get().reading(hit.get().layer(), row));
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
        fault -> workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(fault))));
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
    Optional<AgainstPicture> shown = views.hours().picture();
    if (hour == HourPlot.NO_HOUR || shown.isEmpty()) {
      views.summarise();
      return;
    }
    AgainstWords words = new AgainstWords(shown.get().readings());
    views.say(views.hours(), words.hour(shown.get().sun().orElseThrow(), hour));
  }

  /** Selects an hour on the dry days in view. */
  private void chooseHour(int hour) {
    if (hour == HourPlot.NO_HOUR) {
      givenUp();
      return;
    }
    SunMark sun = views.hours().picture().flatMap(AgainstPicture::sun).orElseThrow();
    Interval visible = workspace.view().visible().get();
    List<Interval> found = sun.hourOfDays(hour).stream().filter(visible::overlaps).toList();
    workspace.selection().set(workspace.selection().get().with(found));
    views.hours().selected(hour);
    String what = AgainstWords.hours(hour) + " selected on the dry days in view: " + found.size();
    workspace.notice().set(new Notice(Notice.Weight.QUIET, what));
  }
}
