package org.rimebook.desk.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryIds;
import org.rimebook.notebook.Notebook;

/**
 * The steps that led to a notebook, read off its history, so that they can be undone and done again
 * after a restart as well as before. Nothing is deleted: undoing a step withdraws its entries,
 * doing it again withdraws those withdrawals. Entries of one step share the stem of their ids and
 * are numbered; an entry with any other id is a step of its own. A step is taken for an undoing by
 * its name and by what it withdraws, so that an entry written by hand is never mistaken for one.
 *
 * @param undoable the steps that count, the latest last
 * @param redoable the steps undone since the last new one, the latest undone last
 */
public record Steps(List<Step> undoable, List<Step> redoable) {

  /** Stem of ids of an undoing. */
  static final String UNDO = "undo-";

  /** Stem of ids of a doing again. */
  static final String REDO = "redo-";

  /** An id as {@link EntryIds} makes it: stem and number. */
  private static final Pattern MADE =
      Pattern.compile("((?:undo-|redo-)?\\d{8}T\\d{6}(?:-.*)?)\\.(\\d+)");

  public Steps {
    undoable = List.copyOf(undoable);
    redoable = List.copyOf(redoable);
  }

  /**
   * Entries written together.
   *
   * @param entries ids of the entries to withdraw to undo it, or to do it again
   * @param marks the entries it wrote when it was first done
   */
  public record Step(List<String> entries, List<Entry> marks) {
    public Step {
      entries = List.copyOf(entries);
      marks = List.copyOf(marks);
    }
  }

  /** The steps of a notebook. */
  public static Steps of(Notebook notebook) {
    Deque<Step> done = new ArrayDeque<>();
    Deque<Step> undone = new ArrayDeque<>();
    for (List<Entry> group : groups(notebook)) {
      if (reverses(group, UNDO, done)) {
        undone.addLast(new Step(ids(group), done.removeLast().marks()));
      } else if (reverses(group, REDO, undone)) {
        done.addLast(new Step(ids(group), undone.removeLast().marks()));
      } else {
        done.addLast(new Step(ids(group), group));
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

  /** The entries of a notebook, those written together in one list. */
  static List<List<Entry>> groups(Notebook notebook) {
    List<List<Entry>> groups = new ArrayList<>();
    String next = "";
    for (Entry entry : notebook.history()) {
      Matcher made = MADE.matcher(entry.header().id());
      boolean numbered = made.matches();
      if (!numbered || !entry.header().id().equals(next)) {
        groups.add(new ArrayList<>());
      }
      List<Entry> group = groups.get(groups.size() - 1);
      group.add(entry);
      next = numbered ? made.group(1) + "." + (group.size() + 1) : "";
    }
    return groups;
  }

  private static boolean reverses(List<Entry> group, String prefix, Deque<Step> steps) {
    if (steps.isEmpty() || !group.get(0).header().id().startsWith(prefix)) {
      return false;
    }
    Set<String> withdrawn = new HashSet<>();
    for (Entry entry : group) {
      if (!(entry instanceof Entry.Withdrawal withdrawal)) {
        return false;
      }
      withdrawn.add(withdrawal.entry());
    }
    return withdrawn.equals(Set.copyOf(steps.peekLast().entries()));
  }

  private static List<String> ids(List<Entry> group) {
    return group.stream().map(entry -> entry.header().id()).toList();
  }

  private static Optional<Step> last(List<Step> steps) {
    return steps.isEmpty() ? Optional.empty() : Optional.of(steps.get(steps.size() - 1));
  }
}
