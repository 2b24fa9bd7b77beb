package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;

/**
 * Makes something of the season as it is on disk, away from the event thread. While totals aren't
 * settled it waits until they are; when the season is closed it is given up.
 */
final class WhenSettled {

  private final Workspace workspace;
  private final Tasks tasks;
  private final Lane lane;
  private final Watched<ExportModel.State> state = new Watched<>(ExportModel.State.IDLE);
  private Optional<Wanted<?>> wanted = Optional.empty();

  /**
   * @param workspace whose season it is
   * @param tasks works away from the event thread
   * @param lane where
   */
  WhenSettled(Workspace workspace, Tasks tasks, Lane lane) {
    this.workspace = workspace;
    this.tasks = tasks;
    this.lane = lane;
    workspace.computed().watch(computed -> begin());
    workspace.opened().watch(opened -> giveUpIfClosed());
    tasks.watch(this::reached);
  }

  /**
   * What is made of a season.
   *
   * @param <T> what it is
   */
  @FunctionalInterface
  interface Job<T> {
    /**
     * Makes it.
     *
     * @param exact the season with the notebook on disk, computed throughout
     * @param progress to be told how far it is
     * @throws InputException when it can't be made
     */
    T make(SeasonResult exact, Progress progress) throws InputException;
  }

  private record Wanted<T>(Path season, String name, Job<T> job, Consumer<T> done) {}

  Watched<ExportModel.State> state() {
    return state;
  }

  /**
   * Makes something as soon as totals are settled; what was wanted before is given up.
   *
   * @param name what is done, in words
   * @param job the work
   * @param done told what was made, on the event thread
   */
  <T> void make(String name, Job<T> job, Consumer<T> done) {
    Path season = workspace.opened().get().orElseThrow().folder();
    wanted = Optional.of(new Wanted<>(season, name, job, done));
    state.set(new ExportModel.State(true, "Waiting until the totals are settled", -1));
    begin();
  }

  /** Gives it up. */
  void cancel() {
    wanted = Optional.empty();
    tasks.cancel(lane);
    state.set(ExportModel.State.IDLE);
  }

  private void giveUpIfClosed() {
    boolean other =
        wanted.isPresent()
            && !workspace.opened().get().map(Opened::folder).equals(wanted.map(Wanted::season));
    if (other) {
      cancel();
    }
  }

  private void begin() {
    Optional<Computed> settled =
        workspace.computed().get().filter(c -> c.state() == Computed.State.SETTLED);
    if (wanted.isEmpty() || settled.isEmpty()) {
      return;
    }
    Wanted<?> now = wanted.get();
    wanted = Optional.empty();
    state.set(new ExportModel.State(true, now.name(), 0));
    run(now, settled.get().result());
  }

  private <T> void run(Wanted<T> now, SeasonResult result) {
    tasks.run(
        lane,
        now.name(),
        progress -> now.job().make(exact(now.season(), result, progress), progress),
        made -> {
          state.set(ExportModel.State.IDLE);
          now.done().accept(made);
        },
        fault -> {
          state.set(ExportModel.State.IDLE);
          workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(fault)));
        });
  }

  private static SeasonResult exact(Path season, SeasonResult result, Progress progress)
      throws InputException {
    progress.step("reading the notebook", 0);
    Season onDisk = result.season().withNotebookIn(season);
    if (onDisk.digests().equals(result.season().digests())) {
      return result;
    }
    progress.step("computing with the notebook on disk", 0.05);
    return SeasonResult.of(onDisk);
  }

  private void reached(Tasks.Running running) {
    if (running.lane() == lane && !running.over() && !running.stage().isEmpty()) {
      state.set(new ExportModel.State(true, running.stage(), running.share()));
    }
  }
}
