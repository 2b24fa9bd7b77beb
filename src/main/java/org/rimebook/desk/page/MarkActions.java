package org.rimebook.desk.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import javax.swing.Action;
import org.rimebook.desk.act.DeskAction;
import org.rimebook.desk.act.Group;
import org.rimebook.desk.model.EdgeDrag;
import org.rimebook.desk.model.EdgeDrag.Edge;
import org.rimebook.desk.model.EntryWords;
import org.rimebook.desk.model.FindingWalk;
import org.rimebook.desk.model.MarkKind;
import org.rimebook.desk.model.Marking;
import org.rimebook.desk.model.ReadingSnap;
import org.rimebook.desk.model.Selection;
import org.rimebook.desk.model.Steps;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/** The commands of marking and of the notebook. */
final class MarkActions {

  private final FindingWalk walk;
  private final Marking marking;
  private final EdgeDrag drag;
  private final MarkGesture gesture;
  private final NotebookPage page;
  private final List<DeskAction> all = new ArrayList<>();

  MarkActions(FindingWalk walk, EdgeDrag drag, MarkGesture gesture, NotebookPage page) {
    this.walk = walk;
    this.marking = walk.marking();
    this.drag = drag;
    this.gesture = gesture;
    this.page = page;
    kinds();
    edges();
    entries();
    reading();
    steps();
    marking.workspace().opened().watch(opened -> refresh());
    marking.workspace().selection().watch(selection -> refresh());
    marking.task().watch(task -> refresh());
  }

  List<DeskAction> all() {
    return List.copyOf(all);
  }

  private void refresh() {
    all.forEach(DeskAction::refresh);
  }

  private void kinds() {
    for (MarkKind kind : MarkKind.values()) {
      all.add(
          DeskAction.named(Group.MARK, kind.words(), () -> marking.start(kind))
              .key(String.valueOf(kind.key()))
              .mnemonic(kind.key())
              .saying("Marks what is selected: " + kind.effect())
              .when(() -> marking.canStart(kind))
              .done());
    }
    all.add(
        DeskAction.named(Group.MARK, "Give up", this::giveUp)
            .key("ESCAPE")
            .mnemonic('G')
            .saying("Gives up the drag, the form or the selection, whichever is there first")
            .done());
  }

  private void edges() {
    all.add(
        DeskAction.named(Group.MARK, "Select a reading", this::selectReading)
            .key("I")
            .mnemonic('S')
            .saying("Selects the reading at the cross-hair, or in the middle, to begin with")
            .when(this::open)
            .done());
    edge("End a reading later", "control RIGHT", Edge.END, 1);
    edge("End a reading earlier", "control LEFT", Edge.END, -1);
    edge("Start a reading earlier", "control shift LEFT", Edge.START, -1);
    edge("Start a reading later", "control shift RIGHT", Edge.START, 1);
    edge("End ten readings later", "control alt RIGHT", Edge.END, 10);
    edge("End ten readings earlier", "control alt LEFT", Edge.END, -10);
  }

  private void edge(String name, String key, Edge edge, int readings) {
    all.add(
        DeskAction.named(Group.MARK, name, () -> move(edge, readings))
            .key(key)
            .saying(
                "Moves an edge of the last interval selected, or of the entry being changed;"
                    + " not while a field is being typed in")
            .when(() -> !intervals().isEmpty())
            .done());
  }

  private void entries() {
    all.add(
        DeskAction.named(Group.NOTEBOOK, "Change entry", this::change)
            .key("F2")
            .mnemonic('C')
            .saying("Opens the fields of the entry chosen, or of what a finding proposes")
            .when(
                () ->
                    walk.canDecide()
                        || counting().filter(e -> MarkKind.of(e).isPresent()).isPresent())
            .done());
    all.add(
        DeskAction.named(
                Group.NOTEBOOK,
                "Withdraw entry",
                () -> counting().ifPresent(marking::askWithdrawal))
            .key("DELETE")
            .mnemonic('W')
            .saying("The entry chosen no longer counts; it stays in the notebook")
            .when(() -> counting().isPresent())
            .done());
    all.add(
        DeskAction.named(Group.NOTEBOOK, "New remark", marking::startRemark)
            .key("control R")
            .mnemonic('N')
            .saying("Words about no time in particular")
            .when(this::open)
            .done());
  }

  private void reading() {
    all.add(
        DeskAction.named(Group.NOTEBOOK, "History of entry", page::toggleHistory)
            .key("control H")
            .mnemonic('H')
            .saying("Who wrote, changed or withdrew the entry chosen, and when")
            .when(() -> page.entryChosen().isPresent())
            .done());
    all.add(
        DeskAction.named(Group.NOTEBOOK, "Find in notebook", page::find)
            .key("control F")
            .mnemonic('F')
            .when(this::open)
            .done());
    all.add(
        DeskAction.named(Group.NOTEBOOK, "Withdrawn entries", page::toggleWithdrawn)
            .mnemonic('E')
            .saying("Shows entries that no longer count, or hides them again")
            .when(this::open)
            .done());
  }

  private void steps() {
    DeskAction undo =
        DeskAction.named(Group.NOTEBOOK, "Undo", marking::undo)
            .key("control Z")
            .mnemonic('U')
            .when(() -> noForm() && stepsNow().flatMap(Steps::undo).isPresent())
            .done();
    DeskAction redo = redo("Redo", 'R', "control shift Z");
    DeskAction again = redo("Redo, other key", 'O', "control Y");
    all.addAll(List.of(undo, redo, again));
    marking
        .workspace()
        .opened()
        .follow(
            opened -> {
              say(undo, "Takes back: ", stepsNow().flatMap(Steps::undo));
              say(redo, "Does again: ", stepsNow().flatMap(Steps::redo));
              say(again, "Does again: ", stepsNow().flatMap(Steps::redo));
            });
  }

  private DeskAction redo(String name, char mnemonic, String key) {
    return DeskAction.named(Group.NOTEBOOK, name, marking::redo)
        .key(key)
        .mnemonic(mnemonic)
        .when(() -> noForm() && stepsNow().flatMap(Steps::redo).isPresent())
        .done();
  }

  private void say(DeskAction action, String deed, Optional<Steps.Step> step) {
    String words =
        step.flatMap(s -> marking.times().map(times -> deed + EntryWords.step(s, times)))
            .orElse("There is no step to take back or to do again");
    action.putValue(Action.SHORT_DESCRIPTION, words);
    action.refresh();
  }

  /** While words are typed, undo would mean them, and mustn't take an entry instead. */
  private boolean noForm() {
    return marking.task().get().isEmpty();
  }

  private Optional<Steps> stepsNow() {
    return marking.keeper().steps();
  }

  private Optional<Entry> counting() {
    return page.entryChosen().flatMap(entry -> marking.entry(entry.header().id()));
  }

  private void change() {
    if (walk.canDecide()) {
      walk.change();
    } else {
      counting().ifPresent(marking::change);
    }
  }

  private void giveUp() {
    if (drag.underWay()) {
      drag.giveUp();
      gesture.giveUp();
    } else if (gesture.underWay()) {
      gesture.giveUp();
    } else if (marking.task().get().isPresent()) {
      marking.drop();
    } else {
      marking.workspace().selection().set(Selection.NONE);
    }
  }

  private void selectReading() {
    Interval visible = marking.workspace().view().visible().get();
    OptionalLong cursor = marking.workspace().cursorMs().get();
    long at = cursor.orElse(visible.fromMs() + visible.lengthMs() / 2);
    marking
        .snap()
        .ifPresent(
            snap ->
                marking
                    .workspace()
                    .selection()
                    .set(marking.workspace().selection().get().only(snap.between(at, at))));
  }

  private void move(Edge edge, int readings) {
    List<Interval> moved = new ArrayList<>(intervals());
    ReadingSnap snap = marking.snap().orElseThrow();
    Interval last = moved.remove(moved.size() - 1);
    moved.add(edge == Edge.START ? snap.startMoved(last, readings) : snap.endMoved(last, readings));
    if (marking.task().get().isEmpty()) {
      marking.chosen().ifPresent(marking::change);
    }
    Selection now = marking.workspace().selection().get();
    marking.workspace().selection().set(now.of(now.entry(), moved));
  }

  private List<Interval> intervals() {
    return marking.snap().isPresent()
        ? marking.workspace().selection().get().intervals()
        : List.of();
  }

  private boolean open() {
    return marking.snap().isPresent();
  }
}
