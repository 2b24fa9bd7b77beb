package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rimebook.desk.model.Marking.Purpose;
import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryCopy;
import org.rimebook.station.Interval;

/**
 * Walks the findings of the open season one by one and has each decided: accepted, changed or
 * dismissed, each as one step of the notebook. While a finding is under review and no form is open,
 * the entry it proposes is the draft, so that the totals tell what it would do.
 */
public final class FindingWalk {

  private final Marking marking;
  private final Workspace workspace;
  private final KnownFindings known = new KnownFindings();
  private Optional<Computed> without = Optional.empty();
  private Optional<Finding> last = Optional.empty();
  private boolean busy;

  /**
   * @param marking fills in and writes what is decided
   */
  public FindingWalk(Marking marking) {
    this.marking = marking;
    this.workspace = marking.workspace();
    marking.decidedBy(new FromForm());
    workspace.opened().watch(opened -> notebookChanged());
    workspace.computed().follow(this::computed);
    workspace.findingOrder().watch(order -> list(left().reviewed()));
    workspace.draft().watch(draft -> propose());
    marking.task().watch(task -> propose());
    workspace.selection().watch(this::follow);
  }

  /** What marks are made with. */
  public Marking marking() {
    return marking;
  }

  /** What is left now. */
  public FindingsLeft left() {
    return workspace.findings().get();
  }

  /** Whether a finding can be gone to: not while a form is filled in. */
  public boolean canWalk() {
    return !left().open().isEmpty() && marking.task().get().isEmpty();
  }

  /** Whether the finding under review can be decided on. */
  public boolean canDecide() {
    return left().reviewed().isPresent() && marking.task().get().isEmpty();
  }

  /** Goes to the next finding; to the one left last, or the first, when none is under review. */
  public void next() {
    walk(1);
  }

  /** Goes to the finding before; to the one left last, or the last, when none is under review. */
  public void previous() {
    walk(-1);
  }

  private void walk(int by) {
    List<Finding> open = left().open();
    if (!canWalk()) {
      return;
    }
    Optional<Finding> resumed = last.filter(open::contains);
    if (left().reviewed().isEmpty() && resumed.isPresent()) {
      review(resumed.get());
      return;
    }
    int now = left().reviewed().map(open::indexOf).orElse(by > 0 ? -1 : open.size());
    review(open.get(Math.floorMod(now + by, open.size())));
  }

  /** Puts a finding under review and shows it with as much time around it. */
  public void review(Finding finding) {
    if (choose(finding)) {
      long from = finding.span().fromMs();
      long to = finding.span().toMs();
      Interval proposed = finding.proposal().span().orElse(finding.span());
      Interval all = new Interval(Math.min(from, proposed.fromMs()), Math.max(to, proposed.toMs()));
      long around = Math.max(all.lengthMs(), TimeView.SHORTEST_MS * 60);
      workspace.view().go(new Interval(all.fromMs() - around / 2, all.toMs() + around / 2));
    }
  }

  /**
   * Puts a finding under review where the strips are.
   *
   * @return whether it is under review now; not when it isn't left, or a form is open
   */
  public boolean choose(Finding finding) {
    if (!left().open().contains(finding) || marking.task().get().isPresent()) {
      return false;
    }
    last = Optional.of(finding);
    busy = true;
    workspace.asked().set(Optional.empty());
    workspace.findings().set(left().reviewing(Optional.of(finding)));
    workspace.selection().set(shown(finding));
    busy = false;
    workspace.draft().set(Optional.of(drawn(finding)));
    return true;
  }

  /** Leaves the review; nothing is decided. */
  public void leave() {
    if (left().reviewed().isPresent()) {
      unreview();
      workspace.selection().set(Selection.NONE);
    }
  }

  private void unreview() {
    workspace.findings().set(left().reviewing(Optional.empty()));
    if (marking.task().get().isEmpty()) {
      workspace.draft().set(Optional.empty());
    }
  }

  /** Walks in the other order from now on. */
  public void turnOrder() {
    workspace.findingOrder().set(workspace.findingOrder().get().other());
  }

  /** Writes what the finding under review proposes, as it is; asks who writes if need be. */
  public void accept() {
    if (!canDecide()) {
      return;
    }
    Finding finding = left().reviewed().orElseThrow();
    if (marking.unsigned()) {
      marking.begin(new Marking.Task(Purpose.ACCEPTANCE, MarkForm.signature(), "", spans(finding)));
    } else if (written(List.of(finding.proposal()))) {
      goOn(finding);
    }
  }

  /** Opens the fields of what the finding under review proposes; writing them decides it. */
  public void change() {
    if (canDecide()) {
      change(spans(left().reviewed().orElseThrow()));
    }
  }

  private void change(List<Interval> spans) {
    Finding finding = left().reviewed().orElseThrow();
    MarkForm.of(finding.proposal(), marking.unsigned())
        .ifPresent(
            form -> {
              busy = true;
              marking.begin(new Marking.Task(Purpose.PROPOSAL, form, "", spans));
              busy = false;
            });
  }

  /** Asks why the finding under review is to be dismissed. */
  public void dismiss() {
    if (canDecide()) {
      Finding finding = left().reviewed().orElseThrow();
      marking.begin(
          new Marking.Task(
              Purpose.DISMISSAL, MarkForm.reasoned(marking.unsigned()), "", spans(finding)));
    }
  }

  /** Totals of the days concerned with what is drawn in; empty while that isn't worked out. */
  public String effect() {
    return FindingEffect.words(workspace, without);
  }

  /** Writes what a form decides, and goes on once the form is put away. */
  private final class FromForm implements Marking.Decider {
    private Optional<Finding> decided = Optional.empty();

    @Override
    public boolean decide(Marking.Task task, List<Entry> filled) {
      decided = left().reviewed();
      boolean written =
          decided.isPresent()
              && switch (task.purpose()) {
                case ACCEPTANCE -> written(List.of(decided.get().proposal()));
                case PROPOSAL -> !filled.isEmpty() && written(filled);
                case DISMISSAL -> written(List.of(dismissal(decided.get(), task.form())));
                default -> false;
              };
      busy = written;
      return written;
    }

    @Override
    public void goOn() {
      busy = false;
      decided.ifPresent(FindingWalk.this::goOn);
    }
  }

  private static Entry dismissal(Finding finding, MarkForm form) {
    String why = form.text(MarkForm.Field.NOTE).strip();
    return new Entry.Dismissal(new Entry.Header("", "", "", why), finding.id());
  }

  private boolean written(List<Entry> entries) {
    Finding finding = left().reviewed().orElseThrow();
    busy = true;
    boolean written = marking.keeper().decide(finding, entries);
    busy = false;
    if (!written && !stillOpen().contains(finding)) {
      marking.drop();
      goOn(finding);
    }
    return written;
  }

  /** Goes from a finding that was decided on to the one after it. */
  private void goOn(Finding decided) {
    List<Finding> before = left().open();
    int at = before.indexOf(decided);
    Set<Finding> open = Set.copyOf(stillOpen());
    List<Finding> after = new ArrayList<>(before.subList(at + 1, before.size()));
    after.addAll(before.subList(0, Math.max(0, at)));
    Optional<Finding> next = after.stream().filter(open::contains).findFirst();
    last = next;
    list(Optional.empty());
    if (next.isPresent()) {
      review(next.get());
    } else {
      workspace.selection().set(Selection.NONE);
      workspace.draft().set(Optional.empty());
    }
  }

  /** Takes what was found, and with it what was decided here and may be undone. */
  private void computed(Optional<Computed> computed) {
    if (computed.isPresent() && computed.get().state() != Computed.State.FORESEEN) {
      without = computed;
    }
    computed
        .filter(now -> now.state() == Computed.State.SETTLED)
        .ifPresent(
            now -> {
              known.take(now.result());
              looked();
            });
  }

  /** Takes what was found in addition to what is known. */
  public void found(List<Finding> findings) {
    known.add(findings);
    looked();
  }

  private void looked() {
    Optional<Finding> before = left().reviewed();
    workspace.findings().set(new FindingsLeft(true, left().open(), before));
    Optional<Finding> again = before.flatMap(known::again);
    list(again);
    again.filter(now -> !before.equals(again)).ifPresent(this::choose);
  }

  private void notebookChanged() {
    if (workspace.opened().get().isEmpty()) {
      known.clear();
      last = Optional.empty();
      without = Optional.empty();
      workspace.findings().set(FindingsLeft.UNKNOWN);
    } else if (!busy && left().looked()) {
      take(stillOpen());
    }
  }

  /** After a step that wasn't a decision made here: an undoing, or an entry that settles some. */
  private void take(List<Finding> open) {
    List<Finding> before = left().open();
    Optional<Finding> back = open.stream().filter(f -> !before.contains(f)).findFirst();
    Optional<Finding> gone = left().reviewed().filter(f -> !open.contains(f));
    if (gone.isPresent() && marking.task().get().isEmpty()) {
      goOn(gone.get());
    } else {
      list(left().reviewed());
    }
    if (marking.task().get().isEmpty()) {
      back.ifPresent(this::review);
    }
  }

  private List<Finding> stillOpen() {
    return known.open(marking.notebook());
  }

  private void list(Optional<Finding> reviewed) {
    if (left().looked()) {
      List<Finding> open =
          stillOpen().stream().sorted(workspace.findingOrder().get().comparator()).toList();
      Optional<Finding> still = reviewed.filter(open::contains);
      boolean lost = left().reviewed().isPresent() && still.isEmpty();
      workspace.findings().set(new FindingsLeft(true, open, still));
      if (lost && marking.task().get().isEmpty()) {
        workspace.draft().set(Optional.empty());
      }
    }
  }

  /** Draws in what is proposed, whenever nothing else is being made. */
  private void propose() {
    Optional<Entry> draft = workspace.draft().get();
    if (!busy && draft.isEmpty() && marking.task().get().isEmpty()) {
      left().reviewed().ifPresent(finding -> workspace.draft().set(Optional.of(drawn(finding))));
    }
  }

  private static Entry drawn(Finding finding) {
    Entry proposal = finding.proposal();
    return EntryCopy.with(proposal, new Entry.Header("draft:1", "", "", proposal.header().note()));
  }

  /** An edge dragged changes what is proposed; anything else selected leaves the review. */
  private void follow(Selection selection) {
    Optional<Finding> finding = left().reviewed();
    if (busy || finding.isEmpty() || marking.task().get().isPresent()) {
      return;
    }
    List<Interval> shown = spans(finding.get());
    List<Interval> now = selection.intervals();
    if (now.equals(shown) && selection.entry().isEmpty()) {
      return;
    }
    if (now.size() == 1 && shown.size() == 1 && sharesAnEdge(now.get(0), shown.get(0))) {
      change(now);
    } else {
      unreview();
    }
  }

  private static boolean sharesAnEdge(Interval one, Interval other) {
    return one.fromMs() == other.fromMs() || one.toMs() == other.toMs();
  }

  private static List<Interval> spans(Finding finding) {
    return finding.proposal().span().stream().toList();
  }

  private static Selection shown(Finding finding) {
    Set<String> wires =
        finding.proposal() instanceof Entry.BadInterval bad
            ? bad.wires()
            : Set.copyOf(finding.wires());
    return new Selection(spans(finding), wires, "");
  }
}
