package org.rimebook.desk.strip;

import java.util.Optional;
import org.rimebook.depth.LevelSeries;
import org.rimebook.depth.WireDepths;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Faults;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.series.CatchCurve;
import org.rimebook.desk.series.LinesAhead;
import org.rimebook.desk.series.Pyramid;
import org.rimebook.desk.series.SeasonSeries;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;

/**
 * Prepares away from the event thread what the strips draw: the lines once a season is open and
 * whenever other readings are used, the catch whenever it is computed.
 */
final class StripFeed {

  private final Workspace workspace;
  private final Tasks tasks;
  private final Runnable changed;
  private Optional<SeasonSeries> series = Optional.empty();
  private Optional<Caught> caught = Optional.empty();
  private LinesAhead ahead = new LinesAhead();

  /**
   * The accumulated catch.
   *
   * @param pyramid its pyramid
   * @param curve the catch
   * @param from what it was made from
   */
  record Caught(Pyramid pyramid, CatchCurve curve, Computed from) {}

  StripFeed(Workspace workspace, Tasks tasks, Runnable changed) {
    this.workspace = workspace;
    this.tasks = tasks;
    this.changed = changed;
    workspace.opened().follow(this::opened);
    workspace.computed().follow(this::computed);
  }

  /** Draws the first season from lines made elsewhere, if they are its. */
  void expect(LinesAhead lines) {
    ahead = lines;
  }

  /** The lines; empty until they are prepared. */
  Optional<SeasonSeries> series() {
    return series;
  }

  /** The catch; empty until it is computed. */
  Optional<Caught> caught() {
    return caught;
  }

  private void opened(Optional<Opened> opened) {
    boolean other =
        series
            .filter(s -> opened.filter(o -> o.season().record() == s.record()).isPresent())
            .isEmpty();
    if (other) {
      series = opened.flatMap(o -> ahead.taken(o.depths()));
      caught = Optional.empty();
      tasks.cancel(Lane.CATCH);
      tasks.cancel(Lane.NEIGHBOUR);
      workspace.neighbour().set(Optional.empty());
      changed.run();
      lines();
    }
  }

  private void computed(Optional<Computed> computed) {
    if (computed.isEmpty()) {
      caught = Optional.empty();
      changed.run();
      return;
    }
    Computed now = computed.get();
    tasks.run(
        Lane.CATCH,
        "Drawing the catch",
        progress -> {
          CatchCurve curve = new CatchCurve(now.result().series());
          return new Caught(Pyramid.of(curve), curve, now);
        },
        made -> {
          caught = Optional.of(made);
          changed.run();
        },
        this::tell);
    if (now.state() != Computed.State.FORESEEN) {
      lines();
    }
  }

  private void lines() {
    Optional<Opened> opened = workspace.opened().get();
    if (opened.isEmpty()) {
      tasks.cancel(Lane.STRIPS);
      return;
    }
    Opened now = opened.get();
    Optional<Computed> with =
        workspace
            .computed()
            .get()
            .filter(c -> c.result().season().record() == now.season().record());
    WireDepths depths = with.map(c -> c.result().depths()).orElse(now.depths());
    Optional<LevelSeries> level = with.map(c -> c.result().level());
    Optional<SeasonSeries> before = series;
    if (before.filter(s -> s.follows(depths, level)).isPresent()) {
      return;
    }
    tasks.run(
        Lane.STRIPS,
        "Drawing the strips",
        progress ->
            before
                .map(s -> s.with(now.season(), depths, level))
                .orElseGet(() -> SeasonSeries.of(now.season(), depths, level)),
        made -> {
          series = Optional.of(made);
          changed.run();
        },
        this::tell);
  }

  private void tell(Throwable fault) {
    workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(fault)));
  }
}
