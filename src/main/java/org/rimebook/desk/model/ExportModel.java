package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.export.SeasonExport;
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
  private final WhenSettled work;

  /**
   * @param workspace whose season is written
   * @param tasks writes away from the event thread
   */
  public ExportModel(Workspace workspace, Tasks tasks) {
    this.workspace = workspace;
    this.work = new WhenSettled(workspace, tasks, Lane.EXPORT);
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

  /** How far the writing is. */
  public Watched<State> state() {
    return work.state();
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
    return obstacle(workspace, folder);
  }

  static Optional<String> obstacle(Workspace workspace, Path folder) {
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
    work.make(
        "Writing the tables",
        (exact, progress) -> write(exact, resolution, folder, progress),
        written ->
            workspace
                .notice()
                .set(new Notice(Notice.Weight.NOTE, "The tables are written to " + written)));
  }

  /** Gives it up; files already there stay as they were. */
  public void cancel() {
    work.cancel();
  }

  private static Path write(
      SeasonResult exact, Resolution resolution, Path folder, Progress progress)
      throws InputException {
    try {
      SeasonExport.write(exact, resolution, folder, progress);
      return folder;
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              folder.toString(),
              "can't be written to (" + e.getMessage() + ")",
              "Choose another folder; nothing was left half-written"));
    }
  }
}
