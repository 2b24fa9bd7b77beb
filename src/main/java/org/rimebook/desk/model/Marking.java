package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.notebook.Notebook;
import org.rimebook.season.Season;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/**
 * Making and changing entries: what is being filled in, the draft that follows it, and the step
 * that writes it. A form that waits for initials, a reason or words stays until it is written or
 * dropped; a step that can't be written leaves it as it is.
 */
public final class Marking {

  /** What a form is for. */
  public enum Purpose {
    /** Entries, one for each span. */
    NEW,
    /** Another entry in place of one. */
    CHANGE,
    /** The reason an entry is withdrawn for. */
    WITHDRAWAL,
    /** Entries in place of what a finding proposes. */
    PROPOSAL,
    /** Initials, to accept what a finding proposes. */
    ACCEPTANCE,
    /** The reason a finding is dismissed for. */
    DISMISSAL,
    /** Initials, to undo. */
    UNDO,
    /** Initials, to do again. */
    REDO;

    /** Whether entries about what is selected are filled in. */
    public boolean marks() {
      return this == NEW || this == CHANGE || this == PROPOSAL;
    }

    /** Whether a finding is decided on. */
    public boolean decides() {
      return this == PROPOSAL || this == ACCEPTANCE || this == DISMISSAL;
    }
  }

  /** Decides on findings. */
  interface Decider {
    /** Writes what a form decides, the entries filled in; true when that is on disk. */
    boolean decide(Task task, List<Entry> filled);

    /** Goes on, after the form was put away. */
    void goOn();
  }

  /**
   * A form under way.
   *
   * @param purpose what it is for
   * @param form its fields
   * @param id id of the entry changed or withdrawn; empty text otherwise
   * @param spans what the entries are about; none for a remark about nothing
   */
  public record Task(Purpose purpose, MarkForm form, String id, List<Interval> spans) {
    public Task {
      spans = List.copyOf(spans);
    }
  }

  private final Workspace workspace;
  private final SeasonKeeper keeper;
  private final TakingBack takingBack = new TakingBack(this);
  private final Watched<Optional<Task>> task = new Watched<>(Optional.empty());
  private Optional<Decider> decider = Optional.empty();

  /**
   * @param workspace whose selection is marked
   * @param keeper writes the entries
   */
  public Marking(Workspace workspace, SeasonKeeper keeper) {
    this.workspace = workspace;
    this.keeper = keeper;
    workspace.selection().watch(this::follow);
  }

  /** Leaves forms about findings to somebody. */
  void decidedBy(Decider walk) {
    decider = Optional.of(walk);
  }

  /** The workspace. */
  public Workspace workspace() {
    return workspace;
  }

  /** The keeper of its season. */
  public SeasonKeeper keeper() {
    return keeper;
  }

  /** The form under way. */
  public Watched<Optional<Task>> task() {
    return task;
  }

  /** The notebook as it stands; without entries while no season is open. */
  public Notebook notebook() {
    return season().map(Season::notebook).orElse(Notebook.EMPTY);
  }

  /** Words for times of the open season. */
  public Optional<EntryTimes> times() {
    return season().map(s -> new EntryTimes(s.sheet().utcOffset()));
  }

  /** Puts edges to the readings of the open season. */
  public Optional<ReadingSnap> snap() {
    return season().map(s -> new ReadingSnap(s.record()));
  }

  /** Names of the wires of the open season, as in the station sheet. */
  public List<String> wires() {
    return season().map(s -> s.sheet().wires().stream().map(Wire::name).toList()).orElse(List.of());
  }

  /** The entry that counts and has an id. */
  public Optional<Entry> entry(String id) {
    return notebook().inForce().stream().filter(e -> e.header().id().equals(id)).findFirst();
  }

  /** The entry chosen. */
  public Optional<Entry> chosen() {
    return entry(workspace.selection().get().entry());
  }

  /** Chooses an entry and what it is about. */
  public void choose(Entry entry) {
    workspace
        .selection()
        .set(workspace.selection().get().of(entry.header().id(), entry.span().stream().toList()));
  }

  /** Chooses an entry and shows its span with as much again around it. */
  public void go(Entry entry) {
    choose(entry);
    entry
        .span()
        .ifPresent(
            span -> {
              long around = Math.max(span.lengthMs(), TimeView.SHORTEST_MS * 60);
              workspace
                  .view()
                  .go(new Interval(span.fromMs() - around / 2, span.toMs() + around / 2));
            });
  }

  /** Whether entries of a kind can be started with what is selected. */
  public boolean canStart(MarkKind kind) {
    boolean selected = !workspace.selection().get().intervals().isEmpty();
    return season().isPresent() && (selected || kind == MarkKind.REMARK);
  }

  /** Starts entries of a kind about what is selected. Words typed for another kind are kept. */
  public void start(MarkKind kind) {
    if (!canStart(kind)) {
      return;
    }
    MarkForm form = new MarkForm(kind, unsigned());
    task.get()
        .filter(before -> before.purpose().marks() && before.purpose() != Purpose.CHANGE)
        .ifPresent(
            before -> form.fields().forEach(field -> form.type(field, before.form().text(field))));
    Selection selected = workspace.selection().get();
    workspace.selection().set(selected.with(selected.intervals()));
    boolean reviewing = workspace.findings().get().reviewed().isPresent();
    Purpose purpose = reviewing ? Purpose.PROPOSAL : Purpose.NEW;
    begin(new Task(purpose, form, "", selected.intervals()));
  }

  /** Starts a remark about no time in particular. */
  public void startRemark() {
    if (season().isPresent()) {
      begin(new Task(Purpose.NEW, new MarkForm(MarkKind.REMARK, unsigned()), "", List.of()));
    }
  }

  /** Starts changing an entry; nothing when it is of a kind that isn't filled in by hand. */
  public void change(Entry entry) {
    MarkForm.of(entry, unsigned())
        .ifPresent(
            form -> {
              List<Interval> about = entry.span().stream().toList();
              String id = entry.header().id();
              Set<String> named =
                  entry instanceof Entry.BadInterval bad
                      ? bad.wires()
                      : workspace.selection().get().wires();
              drop();
              workspace.selection().set(new Selection(about, named, id));
              begin(new Task(Purpose.CHANGE, form, id, about));
            });
  }

  /** Asks for the reason an entry is to be withdrawn for. */
  public void askWithdrawal(Entry entry) {
    drop();
    choose(entry);
    MarkForm form = new MarkForm(MarkKind.REMARK, unsigned());
    begin(new Task(Purpose.WITHDRAWAL, form, entry.header().id(), entry.span().stream().toList()));
  }

  /** Takes back the last step, once it is known who does. */
  public void undo() {
    reverse(Purpose.UNDO, takingBack::now);
  }

  /** Does the step undone last again, once it is known who does. */
  public void redo() {
    reverse(Purpose.REDO, keeper::redo);
  }

  /** Has the draft follow a form that was changed. */
  public void changed() {
    task.get().ifPresent(this::draft);
  }

  /** Leaves the form without writing. */
  public void drop() {
    draft(List.of());
    task.set(Optional.empty());
  }

  /** Writes what the form says, if it is complete; returns whether that is done. */
  public boolean write() {
    Optional<Task> now = task.get().filter(t -> t.form().complete());
    if (now.isEmpty()) {
      return false;
    }
    Task done = now.get();
    if (changesNothing(done)) {
      drop();
      return true;
    }
    if (done.form().fields().contains(MarkForm.Field.INITIALS)) {
      keeper.writer(done.form().text(MarkForm.Field.INITIALS).strip());
    }
    boolean written = written(done);
    if (written) {
      drop();
      if (done.purpose().decides()) {
        decider.ifPresent(Decider::goOn);
      } else if (done.purpose().marks()) {
        chooseLast();
      }
    }
    return written;
  }

  private boolean changesNothing(Task done) {
    Optional<Entry> before = entry(done.id());
    List<Entry> after = entries(done);
    return done.purpose() == Purpose.CHANGE
        && before.isPresent()
        && !after.isEmpty()
        && after.get(0).header().note().equals(before.get().header().note().strip())
        && EntryCopy.with(after.get(0), before.get().header()).equals(before.get());
  }

  /** Chooses the entry written last. */
  void chooseLast() {
    List<Entry> history = notebook().history();
    choose(history.get(history.size() - 1));
  }

  /** Whether whoever writes isn't known yet. */
  boolean unsigned() {
    return keeper.writer().isBlank();
  }

  private boolean written(Task done) {
    List<Entry> entries = entries(done);
    return switch (done.purpose()) {
      case NEW -> !entries.isEmpty() && keeper.write(entries);
      case CHANGE -> !entries.isEmpty() && keeper.replace(done.id(), entries.get(0));
      case PROPOSAL, ACCEPTANCE, DISMISSAL ->
          decider.map(walk -> walk.decide(done, entries)).orElse(false);
      case WITHDRAWAL ->
          keeper.withdraw(List.of(done.id()), done.form().text(MarkForm.Field.NOTE).strip());
      case UNDO -> {
        takingBack.now();
        yield true;
      }
      case REDO -> {
        keeper.redo();
        yield true;
      }
    };
  }

  private void reverse(Purpose purpose, Runnable deed) {
    drop();
    if (unsigned()) {
      begin(new Task(purpose, MarkForm.signature(), "", List.of()));
    } else {
      deed.run();
    }
  }

  /** Opens a form. */
  void begin(Task started) {
    task.set(Optional.of(started));
    draft(started);
  }

  private void follow(Selection selection) {
    task.get()
        .filter(now -> now.purpose().marks())
        .ifPresent(
            now -> {
              if (moves(now, selection)) {
                Task moved = new Task(now.purpose(), now.form(), now.id(), selection.intervals());
                task.set(Optional.of(moved));
              }
              changed();
            });
  }

  /** Whether a form is about what is selected now. Another entry chosen leaves it where it was. */
  private static boolean moves(Task now, Selection selection) {
    boolean own = selection.entry().isEmpty() || selection.entry().equals(now.id());
    boolean one = now.purpose() != Purpose.CHANGE || selection.intervals().size() == 1;
    return own && one && !now.spans().isEmpty() && !selection.intervals().isEmpty();
  }

  private void draft(Task now) {
    if (now.purpose().marks()) {
      draft(entries(now));
    }
  }

  private void draft(List<Entry> entries) {
    workspace.furtherDrafts().set(entries.stream().skip(1).toList());
    workspace.draft().set(entries.stream().findFirst());
  }

  private List<Entry> entries(Task now) {
    Set<String> chosen = workspace.selection().get().wires();
    Set<String> named =
        wires().stream().filter(chosen::contains).collect(Collectors.toUnmodifiableSet());
    Set<String> meant = named.size() == wires().size() ? Set.of() : named;
    List<Entry> entries = new ArrayList<>();
    if (now.spans().isEmpty()) {
      now.form().entry(id(now, 1), Optional.empty(), meant).ifPresent(entries::add);
    }
    for (Interval span : now.spans()) {
      now.form()
          .entry(id(now, entries.size() + 1), Optional.of(span), meant)
          .ifPresent(entries::add);
    }
    return entries;
  }

  private static String id(Task now, int number) {
    return now.id().isEmpty() ? "draft:" + number : now.id();
  }

  private Optional<Season> season() {
    return workspace.opened().get().map(Opened::season);
  }
}
