package org.rimebook.desk.model;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;

/**
 * Opens a season, writes entries into its notebook, and keeps what is computed up with them. An
 * entry is on disk when a method that writes it returns. To be used from the event thread.
 */
public final class SeasonKeeper {

  private final Workspace workspace;
  private final Tasks tasks;
  private final StepWriter steps;
  private final AtomicReference<ReadAhead> ahead = new AtomicReference<>();
  private Consumer<Runnable> first = Runnable::run;
  private boolean foreseeing;
  private boolean again;
  private List<Entry> settled = List.of();

  /**
   * @param workspace told of what is opened and computed
   * @param tasks runs what takes long
   * @param clock tells when an entry is written
   */
  public SeasonKeeper(Workspace workspace, Tasks tasks, Clock clock) {
    this.workspace = workspace;
    this.tasks = tasks;
    this.steps = new StepWriter(workspace, clock);
    workspace.draft().watch(draft -> workspace.opened().get().ifPresent(opened -> foresee()));
    workspace.resolution().watch(resolution -> workspace.computed().get().ifPresent(this::reprint));
  }

  /** Initials of whoever writes from now on. */
  public void writer(String newInitials) {
    steps.writer(newInitials);
  }

  /** Initials of whoever writes. */
  public String writer() {
    return steps.writer();
  }

  /** Opens a season folder in the background; strips can be drawn before totals are there. */
  public void open(Path folder) {
    open(folder, this::tell);
  }

  /**
   * Opens a season folder in the background.
   *
   * @param folder the folder
   * @param failed told why it can't be opened; what was open before stays open
   */
  public void open(Path folder, Consumer<Throwable> failed) {
    tasks.run(
        Lane.OPEN,
        "Opening " + folder.getFileName(),
        progress -> read(folder, progress),
        this::show,
        failed);
  }

  /** Takes a season that is being read already, when it is the first to be opened. */
  public void expect(ReadAhead reading) {
    ahead.set(reading);
  }

  private Opened read(Path folder, Progress progress) throws InputException, InterruptedException {
    ReadAhead reading = ahead.getAndSet(null);
    return reading != null && reading.folder().equals(folder)
        ? reading.season(progress)
        : SeasonStages.open(folder, progress);
  }

  /**
   * Puts the first computing of each season off that is opened.
   *
   * @param ready given what computes; to run it on the event thread when nothing more urgent is
   *     left to do
   */
  public void computeAfter(Consumer<Runnable> ready) {
    first = ready;
  }

  /** Closes the season; all entries are on disk as they are. */
  public void close() {
    clear();
    workspace.view().reset(new Interval(0, TimeView.SHORTEST_MS));
  }

  private void reprint(Computed now) {
    workspace
        .computed()
        .set(
            Optional.of(
                new Computed(
                    now.result(), now.result().totals(workspace.resolution().get()), now.state())));
  }

  private void show(Opened opened) {
    clear();
    workspace.view().reset(opened.whole());
    workspace.opened().set(Optional.of(opened));
    first.accept(
        () -> {
          // Meanwhile another season may be open, or an entry written and its totals under way.
          if (workspace.opened().get().equals(Optional.of(opened))) {
            settle();
          }
        });
  }

  private void clear() {
    tasks.cancel(Lane.PREVIEW);
    tasks.cancel(Lane.SETTLE);
    foreseeing = false;
    again = false;
    workspace.notice().set(Notice.NONE);
    workspace.opened().set(Optional.empty());
    workspace.selection().set(Selection.NONE);
    workspace.asked().set(Optional.empty());
    workspace.draft().set(Optional.empty());
    workspace.computed().set(Optional.empty());
  }

  /**
   * Writes entries as one step that can be undone. Their headers' notes are kept.
   *
   * @return whether they are on disk; if not, the workspace's notice says why
   */
  public boolean write(List<Entry> entries) {
    return step("", (notebook, ids) -> StepWriter.headed(entries, ids));
  }

  /**
   * Changes an entry: withdraws it and writes the new one, as one step.
   *
   * @return whether that is on disk; not when the entry doesn't count any more
   */
  public boolean replace(String id, Entry changed) {
    return step(
        "",
        (notebook, ids) -> {
          List<Entry> both = new ArrayList<>(steps.withdrawals(notebook, List.of(id), "", ids));
          if (!both.isEmpty()) {
            both.addAll(StepWriter.headed(List.of(changed), ids));
          }
          return both;
        });
  }

  /**
   * Withdraws entries as one step, with the reason. Withdrawing a withdrawal brings its entry back.
   *
   * @return whether that is on disk; not when one of the entries doesn't count any more
   */
  public boolean withdraw(List<String> ids, String reason) {
    return step("", (notebook, made) -> steps.withdrawals(notebook, ids, reason, made));
  }

  /**
   * Writes entries that decide on a finding as one step, with a dismissal of it where they wouldn't
   * settle it by themselves.
   *
   * @return whether they are on disk; not when somebody else has decided on it meanwhile
   */
  public boolean decide(Finding finding, List<Entry> entries) {
    return step("", (notebook, ids) -> steps.deciding(notebook, finding, entries, ids));
  }

  /** Takes back the last step; nothing when there is none. */
  public void undo() {
    Optional<Steps.Step> seen = steps().flatMap(Steps::undo);
    step(Steps.UNDO, (notebook, ids) -> steps.reversal(seen, Steps.of(notebook).undo(), ids));
  }

  /** Does the step undone last again; nothing when there is none. */
  public void redo() {
    Optional<Steps.Step> seen = steps().flatMap(Steps::redo);
    step(Steps.REDO, (notebook, ids) -> steps.reversal(seen, Steps.of(notebook).redo(), ids));
  }

  /** The steps of the open notebook. */
  public Optional<Steps> steps() {
    return workspace.opened().get().map(o -> Steps.of(o.season().notebook()));
  }

  /** Writes a step and shows totals that are close at once, then the exact ones. */
  private boolean step(String prefix, StepWriter.Making making) {
    Optional<Opened> before = workspace.opened().get();
    boolean written = steps.step(prefix, making);
    if (written) {
      workspace.draft().set(Optional.empty());
    }
    if (!before.equals(workspace.opened().get())) {
      foresee();
    }
    return written;
  }

  /**
   * Totals as they are with the entries, and with the draft if there is one. While they are being
   * computed a further call only marks that they are to be computed once more: work that a moving
   * hand would replace again and again would never end.
   */
  private void foresee() {
    if (foreseeing) {
      again = true;
      return;
    }
    Optional<Computed> before = workspace.computed().get();
    if (before.isEmpty()) {
      settle();
      return;
    }
    foreseeing = true;
    tasks.cancel(Lane.SETTLE);
    Notebook notebook = drafted(workspace.opened().get().orElseThrow().season().notebook());
    Resolution resolution = workspace.resolution().get();
    Computed.State state =
        workspace.draft().get().isPresent() ? Computed.State.FORESEEN : Computed.State.CLOSE;
    tasks.run(
        Lane.PREVIEW,
        "Totals",
        progress -> SeasonStages.close(notebook, resolution, before, state),
        this::foreseen,
        fault -> {
          foreseeing = false;
          tell(fault);
        });
  }

  private void foreseen(Optional<Computed> close) {
    foreseeing = false;
    workspace.computed().set(close);
    if (again) {
      again = false;
      foresee();
    } else if (workspace.draft().get().isEmpty() || restsUnsettled()) {
      settle();
    }
  }

  /** Whether a proposal is looked at, with a notebook whose exact totals aren't there yet. */
  private boolean restsUnsettled() {
    return workspace.findings().get().reviewed().isPresent()
        && !settled.equals(workspace.opened().get().orElseThrow().season().notebook().history());
  }

  private Notebook drafted(Notebook notebook) {
    Notebook drafted = notebook;
    for (Entry further : workspace.furtherDrafts().get()) {
      drafted = SeasonStages.with(drafted, further);
    }
    Optional<Entry> draft = workspace.draft().get();
    return draft.isEmpty() ? notebook : SeasonStages.with(drafted, draft.get());
  }

  private void settle() {
    Opened opened = workspace.opened().get().orElseThrow();
    Resolution resolution = workspace.resolution().get();
    tasks.run(
        Lane.SETTLE,
        "Computing totals",
        progress -> SeasonStages.settled(opened, resolution, progress),
        this::settled,
        this::tell);
  }

  private void settled(Computed computed) {
    settled = computed.result().season().notebook().history();
    workspace.computed().set(Optional.of(computed));
    if (workspace.draft().get().isPresent()) {
      foresee();
    }
  }

  private void tell(Throwable fault) {
    workspace.notice().set(new Notice(Notice.Weight.FAULT, Faults.words(fault)));
  }
}
