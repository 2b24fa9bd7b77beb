package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;

/**
 * How an entry came to stand as it does: what was written before it and changed into it, who
 * withdrew it or brought it back, and when. Read off the notebook, in which nothing is deleted.
 */
public final class EntryHistory {

  private final Map<Integer, String> lines = new TreeMap<>();
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<Entry, List<Entry>> steps = new HashMap<>();
  private final List<Entry> history;
  private final EntryTimes times;

  private EntryHistory(Notebook notebook, EntryTimes times) {
    this.history = notebook.history();
    this.times = times;
    for (int i = 0; i < history.size(); i++) {
      places.put(history.get(i).header().id(), i);
    }
    Steps.groups(notebook).forEach(step -> step.forEach(entry -> steps.put(entry, step)));
  }

  /** Its lines in the order they happened; none for an id the notebook doesn't have. */
  public static List<String> of(Notebook notebook, String id, EntryTimes times) {
    EntryHistory story = new EntryHistory(notebook, times);
    Optional.ofNullable(story.places.get(id))
        .map(story.history::get)
        .ifPresent(entry -> story.tell(entry, true));
    return List.copyOf(story.lines.values());
  }

  private void tell(Entry entry, boolean asked) {
    Optional<Entry> before = predecessor(entry);
    before.ifPresent(earlier -> tell(earlier, false));
    String deed = before.isPresent() ? "changed to " : "written";
    String own = before.isPresent() ? "this" : "";
    line(entry, deed + (asked ? own : (before.isPresent() ? "" : ": ") + said(entry)));
    withdrawals(entry, true);
  }

  /** Withdrawals of an entry take it away, those of a withdrawal bring it back, and so on. */
  private void withdrawals(Entry entry, boolean takesAway) {
    for (Entry later : history.subList(places.get(entry.header().id()) + 1, history.size())) {
      if (later instanceof Entry.Withdrawal withdrawal
          && withdrawal.entry().equals(entry.header().id())) {
        if (!takesAway || successor(later).isEmpty()) {
          String reason = later.header().note();
          String deed = takesAway ? "withdrawn" : "brought back";
          line(later, deed + (reason.isEmpty() ? "" : ": " + reason));
        }
        withdrawals(later, !takesAway);
      }
    }
  }

  /** What an entry was changed from: the one its step withdraws, when it changes just one. */
  private Optional<Entry> predecessor(Entry entry) {
    List<Entry> step = steps.get(entry);
    if (step.size() == 2
        && step.get(1).equals(entry)
        && step.get(0) instanceof Entry.Withdrawal withdrawal) {
      return Optional.ofNullable(places.get(withdrawal.entry()))
          .filter(place -> place < places.get(withdrawal.header().id()))
          .map(history::get);
    }
    return Optional.empty();
  }

  private Optional<Entry> successor(Entry withdrawal) {
    List<Entry> step = steps.get(withdrawal);
    return step.size() == 2 && !(step.get(1) instanceof Entry.Withdrawal)
        ? Optional.of(step.get(1))
        : Optional.empty();
  }

  private String said(Entry entry) {
    List<String> parts = new ArrayList<>();
    parts.add(EntryWords.kind(entry));
    entry.span().map(times::span).ifPresent(parts::add);
    parts.add(EntryWords.particulars(entry));
    parts.add(entry.header().note());
    parts.removeIf(String::isEmpty);
    return String.join(", ", parts);
  }

  private void line(Entry entry, String deed) {
    String who = entry.header().by().isEmpty() ? "" : " " + entry.header().by();
    lines.put(
        places.get(entry.header().id()), times.written(entry.header().at()) + who + " " + deed);
  }
}
