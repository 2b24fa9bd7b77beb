package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.export.SeasonExport;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/**
 * Writes the tables of the season: the bytes the command line writes from the season folder as it
 * is on disk. While totals aren't settled it waits until they are.
 */
public final class ExportModel {

  private final Workspace workspace;
  private final Tasks tasks;
  private final Watched<State> state = new Watched<>(State.IDLE);
  private Optional<Wanted> wanted = Optional.empty();

  /**
   * @param workspace whose season is written
   * @param tasks writes away from the event thread
   */
  public ExportModel(Workspace workspace, Tasks tasks) {
    this.workspace = workspace;
    this.tasks = tasks;
    workspace.computed().watch(computed -> begin());
    workspace.opened().watch(opened -> giveUpIfClosed());
    tasks.watch(this::reached);
  }

  /**
   * How far the writing is.
   *
   * @param busy whether something is to be written
   * @param words what is done now; empty text when nothing is
   * @param share how much is done, 0 to 1; negative when that can't be told
   */
  public record State(boolean busy, String words, double share) {
    /** Nothing to write. */
    public static final State IDLE = new State(false, "", -1);
  }

  private record Wanted(Path season, Path folder, Resolution resolution) {}

  /** How far the writing is. */
  public Watched<State> state() {
    return state;
  }

  /** Where tables go unless told otherwise: a folder of their own in the season folder. */
  public Path suggestedFolder() {
    return workspace
        .opened()
        .get()
        .map(o -> o.folder().resolve("totals"))
        .orElse(Path.of("totals"));
  }

  /** Why nothing can be written into a folder, and what to do; empty when it can. */
  public Optional<String> obstacle(Path folder) {
    Optional<Opened> opened = workspace.opened().get();
    if (opened.isEmpty()) {
      return Optional.of("Open a season first");
    }
    return SeasonExport.amongTheRecord(opened.get().season(), opened.get().folder(), folder)
        ? Optional.of(
            "This folder holds logger files of the season; tables written there would be read as"
                + " such. Choose another one")
        : Optional.empty();
  }

  /** Writes the tables as soon as totals are settled; nothing while there is an obstacle. */
  public void start(Path folder, Resolution resolution) {
    if (obstacle(folder).isPresent()) {
      return;
    }
    Path season = workspace.opened().get().orElseThrow().folder();
    wanted = Optional.of(new Wanted(season, folder, resolution));
    state.set(new State(true, "Waiting until the totals are settled", -1));
    begin();
  }

  /** Gives it up; files already there stay as they were. */
  public void cancel() {
    wanted = Optional.empty();
    tasks.cancel(Lane.EXPORT);
    state.set(State.IDLE);
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
    Wanted now = wanted.get();
    wanted = Optional.empty();
    state.set(new State(true, "Writing the tables", 0));
    tasks.run(
        Lane.EXPORT,
        "Writing the tables",
        progress -> write(settled.get().result(), now, progress),
        folder -> end(new Notice(Notice.Weight.NOTE, "The tables are written to " + folder)),
        fault -> end(new Notice(Notice.Weight.FAULT, Faults.words(fault))));
  }

  private void end(Notice notice) {
    state.set(State.IDLE);
    workspace.notice().set(notice);
  }

  private void reached(Tasks.Running running) {
    if (running.lane() == Lane.EXPORT && !running.over() && !running.stage().isEmpty()) {
      state.set(new State(true, running.stage(), running.share()));
    }
  }

  private static Path write(SeasonResult result, Wanted wanted, Progress progress)
      throws InputException {
    progress.step("reading the notebook", 0);
    Season onDisk = result.season().withNotebookIn(wanted.season());
    boolean same = onDisk.digests().equals(result.season().digests());
    if (!same) {
      progress.step("computing with the notebook on disk", 0.05);
    }
    SeasonResult exact = same ? result : SeasonResult.of(onDisk);
    try {
      SeasonExport.write(exact, wanted.resolution(), wanted.folder(), progress);
      return wanted.folder();
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              wanted.folder().toString(),
              "can't be written to (" + e.getMessage() + ")",
              "Choose another folder; nothing was left half-written"));
    }
  }
}
