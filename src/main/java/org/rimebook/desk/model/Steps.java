package org.rimebook.desk.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;

/**
 * The steps that led to a notebook, read off its history, so that they can be undone and done again
 * after a restart as well as before. Nothing is deleted: undoing a step withdraws its entries,
 * doing it again withdraws those withdrawals. Entries of one step share the stem of their ids;
 * steps that undo or redo carry the name of what they do.
 *
 * @param undoable the steps that count, the latest last
 * @param redoable the steps undone since the last new one, the latest undone last
 */
public record Steps(List<Step> undoable, List<Step> redoable) {

  /** Stem of ids of an undoing. */
  static final String UNDO = "undo-";

  /** Stem of ids of a doing again. */
  static final String REDO = "redo-";

  public Steps {
    undoable = List.copyOf(undoable);
    redoable = List.copyOf(redoable);
  }

  /**
   * Entries written together.
   *
   * @param stem what their ids have in common
   * @param entries ids of the entries to withdraw to undo it, or to do it again
   */
  public record Step(String stem, List<String> entries) {
    public Step {
      entries = List.copyOf(entries);
    }
  }

  /** The steps of a notebook. */
  public static Steps of(Notebook notebook) {
    Deque<Step> done = new ArrayDeque<>();
    Deque<Step> undone = new ArrayDeque<>();
    for (Step step : grouped(notebook.history())) {
      if (step.stem().startsWith(UNDO) && !done.isEmpty()) {
        done.removeLast();
        undone.addLast(step);
      } else if (step.stem().startsWith(REDO) && !undone.isEmpty()) {
        undone.removeLast();
        done.addLast(step);
      } else {
        done.addLast(step);
        undone.clear();
      }
    }
    return new Steps(List.copyOf(done), List.copyOf(undone));
  }

  /** What undo would take back. */
  public Optional<Step> undo() {
    return last(undoable);
  }

  /** What redo would do again. */
  public Optional<Step> redo() {
    return last(redoable);
  }

  private static Optional<Step> last(List<Step> steps) {
    return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
  }

  private static List<Step> grouped(List<Entry> history) {
    List<Step> steps = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    String stem = "";
    for (Entry entry : history) {
      String own = stem(entry.header().id());
      if (!own.equals(stem) && !ids.isEmpty()) {
        steps.add(new Step(stem, ids));
        ids = new ArrayList<>();
      }
      stem = own;
      ids.add(entry.header().id());
    }
    if (!ids.isEmpty()) {
      steps.add(new Step(stem, ids));
    }
    return steps;
  }

  /** An id without the number that tells entries of one step apart. */
  static String stem(String id) {
    int dot = id.lastIndexOf('.');
    return dot < 0 ? id : id.substring(0, dot);
  }
}
