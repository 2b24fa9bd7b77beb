package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.notebook.EntryDifference;
import org.rimebook.notebook.Notebook;
import org.rimebook.notebook.NotebookComparison;
import org.rimebook.notebook.NotebookLog;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;
import org.rimebook.station.Wire;
import org.rimebook.totals.DayDifference;
import org.rimebook.totals.Resolution;

/** Compares the notebook of the open season with another one of the same season. */
public final class CompareModel {

  private final Workspace workspace;
  private final SeasonKeeper keeper;
  private final Tasks tasks;
  private final Watched<Optional<Comparison>> comparison = new Watched<>(Optional.empty());
  private Optional<Theirs> theirs = Optional.empty();
  private Optional<Path> openFolder = Optional.empty();

  /**
   * @param workspace the open season
   * @param keeper writes entries that are taken over
   * @param tasks computes the other totals away from the event thread
   */
  public CompareModel(Workspace workspace, SeasonKeeper keeper, Tasks tasks) {
    this.workspace = workspace;
    this.keeper = keeper;
    this.tasks = tasks;
    workspace.opened().follow(opened -> seasonChanged());
    workspace.computed().watch(computed -> renew());
  }

  private record Theirs(Path file, Notebook notebook, Computed computed) {}

  /**
   * Two notebooks side by side.
   *
   * @param file the other notebook
   * @param entries entries that differ
   * @param days days that differ
   * @param mine the season by the open notebook
   * @param theirs the season by the other
   */
  public record Comparison(
      Path file,
      List<EntryDifference> entries,
      List<DayDifference> days,
      Computed mine,
      Computed theirs) {

    /** Catch of the season by the open notebook, in words. */
    public String mineWords() {
      return SeasonHeadline.season(mine);
    }

    /** Catch of the season by the other notebook, in words. */
    public String theirsWords() {
      return SeasonHeadline.season(theirs);
    }
  }

  /** The comparison; empty when there is none. */
  public Watched<Optional<Comparison>> comparison() {
    return comparison;
  }

  /** Reads another notebook and computes the season with it. */
  public void open(Path file) {
    Optional<Opened> opened = workspace.opened().get();
    if (opened.isEmpty()) {
      tell("Open a season first, then the notebook to compare it with");
      return;
    }
    Season season = opened.get().season();
    Resolution resolution = workspace.resolution().get();
    tasks.run(
        Lane.COMPARE,
        "Comparing with " + file.getFileName(),
        progress -> read(season, file, resolution, progress),
        read -> {
          theirs = Optional.of(read);
          renew();
        },
        fault -> tell(Faults.words(fault)));
  }

  /** Stops reading or computing the other notebook. */
  public void cancel() {
    tasks.cancel(Lane.COMPARE);
  }

  /** Puts the other notebook away. */
  public void close() {
    cancel();
    theirs = Optional.empty();
    comparison.set(Optional.empty());
  }

  private void tell(String words) {
    workspace.notice().set(new Notice(Notice.Weight.FAULT, words));
  }

  private static Theirs read(Season season, Path file, Resolution resolution, Progress progress)
      throws InputException {
    progress.step("reading the other notebook", 0);
    Notebook notebook;
    try {
      notebook = NotebookLog.read(file);
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              file.toString(),
              "can't be read (" + e.getMessage() + ")",
              "Check that it is there and that you may read it"));
    }
    if (notebook.history().isEmpty()) {
      throw new InputException(
          Problem.inFile(
              file.toString(),
              "holds no entry that can be read",
              "Choose the notebook.jsonl of the same season"));
    }
    progress.step("catch by the other notebook", 0.1);
    SeasonResult result = SeasonResult.of(season.with(notebook));
    progress.step("totals by the other notebook", 0.9);
    return new Theirs(
        file, notebook, new Computed(result, result.totals(resolution), Computed.State.SETTLED));
  }

  private void seasonChanged() {
    Optional<Path> now = workspace.opened().get().map(Opened::folder);
    if (!now.equals(openFolder)) {
      openFolder = now;
      close();
    } else {
      renew();
    }
  }

  private void renew() {
    Optional<Opened> opened = workspace.opened().get();
    Optional<Computed> computed = workspace.computed().get();
    if (theirs.isEmpty() || opened.isEmpty() || computed.isEmpty()) {
      return;
    }
    Theirs other = theirs.get();
    if (other.computed().totals().resolution() != computed.get().totals().resolution()) {
      reprint(other, computed.get().totals().resolution());
      return;
    }
    Season season = opened.get().season();
    List<String> wires = season.sheet().wires().stream().map(Wire::name).toList();
    comparison.set(
        Optional.of(
            new Comparison(
                other.file(),
                NotebookComparison.of(season.notebook(), other.notebook(), wires),
                DayDifference.between(computed.get().totals(), other.computed().totals()),
                computed.get(),
                other.computed())));
  }

  private void reprint(Theirs other, Resolution resolution) {
    SeasonResult result = other.computed().result();
    tasks.run(
        Lane.COMPARE,
        "Totals by the other notebook",
        progress ->
            new Theirs(
                other.file(),
                other.notebook(),
                new Computed(result, result.totals(resolution), Computed.State.SETTLED)),
        printed -> {
          theirs = Optional.of(printed);
          renew();
        },
        fault -> tell(Faults.words(fault)));
  }

  /** Goes to a day or an entry in all views. */
  public void show(Interval span) {
    workspace.selection().set(workspace.selection().get().only(span));
    CloseUp.of(workspace.view().visible().get(), span).ifPresent(workspace.view()::go);
  }

  /** Whether the other notebook has something that can be taken over. */
  public static boolean canTakeOver(EntryDifference difference) {
    return difference.theirs().filter(entry -> !(entry instanceof Entry.Unknown)).isPresent();
  }

  /**
   * Writes an entry of the other notebook into the open one, in place of the one it differs from
   * where there is one; who wrote it stays in its note.
   */
  public void takeOver(EntryDifference difference) {
    if (!canTakeOver(difference)) {
      return;
    }
    Entry entry = difference.theirs().orElseThrow();
    Entry.Header header = entry.header();
    String who = header.by().isEmpty() ? "the other notebook" : header.by();
    String note = (header.note() + " (taken over from " + who + ", " + header.at() + ")").strip();
    Entry copy =
        EntryCopy.with(entry, new Entry.Header(header.id(), header.at(), header.by(), note));
    if (difference.mine().isPresent()) {
      keeper.replace(difference.mine().get().header().id(), copy);
    } else {
      keeper.write(List.of(copy));
    }
  }
}
