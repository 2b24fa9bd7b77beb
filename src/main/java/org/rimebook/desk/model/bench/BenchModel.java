package org.rimebook.desk.model.bench;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Faults;
import org.rimebook.desk.model.Notice;
import org.rimebook.desk.model.Opened;
import org.rimebook.desk.model.PaperFile;
import org.rimebook.desk.model.SeasonKeeper;
import org.rimebook.desk.model.Watched;
import org.rimebook.desk.model.Workspace;
import org.rimebook.desk.model.bench.BenchPaper.Made;
import org.rimebook.desk.model.bench.Preparation.Outcome;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.export.leaflet.LeafletPdf;
import org.rimebook.season.Season;
import org.rimebook.station.Interval;

/**
 * The bench of the season that is open: whether it is to be seen, which task is chosen, its forms,
 * the paper made of each, and storing what was found. Nothing is made before it is first opened,
 * and forms last as long as their season. To be used from the event thread.
 */
public final class BenchModel {

  private final Workspace workspace;
  private final SeasonKeeper keeper;
  private final Tasks tasks;
  private final Consumer<Path> reopen;
  private final Watched<Boolean> shown = new Watched<>(false);
  private final Watched<BenchTask> task = new Watched<>(BenchTask.CALIBRATION);
  private final Watched<Long> changes = new Watched<>(0L);
  private final Map<BenchTask, Watched<BenchPaper>> papers = new EnumMap<>(BenchTask.class);
  private Optional<BenchForms> forms = Optional.empty();
  private Optional<Fact.OfSheet> storing = Optional.empty();

  /**
   * @param workspace whose season it is
   * @param keeper writes entries
   * @param tasks makes papers away from the event thread
   * @param reopen opens a season folder anew after its sheet was changed
   */
  public BenchModel(Workspace workspace, SeasonKeeper keeper, Tasks tasks, Consumer<Path> reopen) {
    this.workspace = workspace;
    this.keeper = keeper;
    this.tasks = tasks;
    this.reopen = reopen;
    for (BenchTask each : BenchTask.values()) {
      papers.put(each, new Watched<>(BenchPaper.NONE));
    }
    workspace.opened().watch(this::turn);
    workspace.computed().watch(computed -> changed());
  }

  /** Whether it is to be seen. */
  public Watched<Boolean> shown() {
    return shown;
  }

  /** The task chosen. */
  public Watched<BenchTask> task() {
    return task;
  }

  /** Counts changes of the forms and of the season; a new paper is due after each. */
  public Watched<Long> changes() {
    return changes;
  }

  /** The paper of a task. */
  public Watched<BenchPaper> paper(BenchTask of) {
    return papers.get(of);
  }

  /** The forms; empty until the bench is opened with a season. */
  public Optional<BenchForms> forms() {
    return forms;
  }

  /** Whether it isn't known yet who writes entries. */
  public boolean unsigned() {
    return keeper.writer().isBlank();
  }

  /** Whether it can be opened. */
  public boolean canOpen() {
    return workspace.opened().get().isPresent();
  }

  /** Opens it at the task chosen last, or closes it. */
  public void toggle() {
    if (shown.get()) {
      close();
    } else {
      open(task.get());
    }
  }

  /** Opens it at a task; nothing while no season is open. */
  public void open(BenchTask wanted) {
    Optional<Opened> opened = workspace.opened().get();
    if (opened.isEmpty()) {
      return;
    }
    if (forms.isEmpty()) {
      forms = Optional.of(new BenchForms(opened.get(), this::changed));
    }
    if (!shown.get()) {
      List<Interval> selected = workspace.selection().get().intervals();
      forms
          .get()
          .installation()
          .propose(selected.isEmpty() ? workspace.view().visible().get() : selected.get(0));
    }
    task.set(wanted);
    shown.set(true);
    changed();
  }

  /** Chooses a task. */
  public void choose(BenchTask wanted) {
    task.set(wanted);
    changed();
  }

  /** Closes it; what was filled in stays. */
  public void close() {
    tasks.cancel(Lane.BENCH);
    shown.set(false);
  }

  /** A season that is opened anew after its sheet was changed is closed for a moment. */
  private void turn(Optional<Opened> opened) {
    boolean same =
        opened.map(Opened::folder).equals(forms.map(BenchForms::folder))
            || opened.isEmpty() && storing.isPresent();
    if (!same) {
      close();
      forms = Optional.empty();
      storing = Optional.empty();
      papers.values().forEach(paper -> paper.set(BenchPaper.NONE));
    } else if (opened.isPresent()
        && storing.isPresent()
        && storing.get().writing().in(opened.get().season().sheet())) {
      note(storing.get().stored());
      storing = Optional.empty();
    }
    changed();
  }

  private void changed() {
    if (shown.get()) {
      Watched<BenchPaper> paper = papers.get(task.get());
      paper.set(paper.get().outdated(paper.get().words()));
      changes.set(changes.get() + 1);
    }
  }

  /** Makes the paper of the task chosen; what was being made is given up. */
  public void make() {
    if (!shown.get() || forms.isEmpty() || workspace.opened().get().isEmpty()) {
      return;
    }
    BenchTask of = task.get();
    Preparation prepared = forms.get().of(of).prepare(moment());
    if (prepared.making().isEmpty()) {
      tasks.cancel(Lane.BENCH);
      outdate(of, prepared.missing());
      return;
    }
    // What was typed while a paper was being made isn't in it: that paper may not be stored.
    long asked = changes.get();
    tasks.run(
        Lane.BENCH,
        "Making the paper",
        progress -> {
          Outcome outcome = prepared.making().get().make(progress);
          progress.step("paper", 0.8);
          return new Made(outcome, LeafletPdf.of(outcome.leaflet()));
        },
        made -> papers.get(of).set(new BenchPaper(Optional.of(made), changes.get() == asked, "")),
        why ->
            outdate(of, why instanceof IllegalArgumentException ? said(why) : Faults.words(why)));
  }

  private void outdate(BenchTask of, String why) {
    papers.get(of).set(papers.get(of).get().outdated(why));
  }

  /** A sentence out of words that begin small. */
  private static String said(Throwable why) {
    String words = String.valueOf(why.getMessage());
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private Moment moment() {
    Season season = workspace.opened().get().orElseThrow().season();
    return new Moment(
        season,
        workspace
            .computed()
            .get()
            .filter(computed -> computed.state() == Computed.State.SETTLED)
            .map(Computed::result)
            .filter(
                result -> result.season().notebook().history().equals(season.notebook().history())),
        unsigned());
  }

  /** Stores something; the workspace's notice says that it is, or why not. */
  public void store(Fact fact) {
    if (fact instanceof Fact.OfNotebook entry) {
      store(entry);
    } else if (fact instanceof Fact.OfSheet sheet) {
      store(sheet);
    }
  }

  private void store(Fact.OfNotebook fact) {
    sign(fact);
    if (keeper.write(List.of(fact.entry()))) {
      note(fact.stored());
    }
  }

  private void sign(Fact.OfNotebook fact) {
    if (unsigned()) {
      keeper.writer(fact.initials());
    }
  }

  private void store(Fact.OfSheet fact) {
    Path folder = workspace.opened().get().orElseThrow().folder();
    tasks.run(
        Lane.BENCH_STORE,
        "Storing it in the station sheet",
        progress -> {
          fact.writing().write(folder);
          return folder;
        },
        changedFolder -> {
          if (workspace.opened().get().map(Opened::folder).equals(Optional.of(changedFolder))) {
            sign(fact.entry());
            boolean told = keeper.write(List.of(fact.entry().entry()));
            storing = Optional.of(told ? fact : fact.untold());
            reopen.accept(changedFolder);
          }
        },
        why -> workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(why))));
  }

  /** Where a paper goes unless told otherwise: into the season folder. */
  public Path suggestedFile(Made paper) {
    return workspace
        .opened()
        .get()
        .map(o -> o.folder().resolve(paper.fileName()))
        .orElse(Path.of(paper.fileName()));
  }

  /** Why a paper can't be saved as a file, and what to do; empty when it can. */
  public Optional<String> obstacle(Path file) {
    return PaperFile.obstacle(workspace, file);
  }

  /** Saves a paper. */
  public void save(Made paper, Path file) {
    tasks.run(
        Lane.EXPORT,
        "Saving the paper",
        progress -> PaperFile.write(file, paper.pdf()),
        saved -> note("The paper is saved as " + saved),
        why -> workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(why))));
  }

  private void note(String words) {
    workspace.notice().set(new Notice(Notice.Weight.NOTE, words));
  }
}
