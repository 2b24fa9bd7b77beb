package org.rimebook.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rimebook.station.Problem;

/**
 * The entries of a season in the order they were written.
 *
 * @param history every entry, withdrawn ones and withdrawals too
 * @param notes what was met on reading and didn't stop it: unknown kinds, unknown members, lines
 *     that aren't an entry
 */
public record Notebook(List<Entry> history, List<Problem> notes) {

  /** A notebook nobody has written in. */
  public static final Notebook EMPTY = new Notebook(List.of(), List.of());

  public Notebook {
    history = List.copyOf(history);
    notes = List.copyOf(notes);
  }

  /**
   * The entries that count, in the order written, without withdrawals. An entry counts unless a
   * withdrawal that itself counts was written after it and names it; so withdrawing a withdrawal
   * brings the entry back.
   */
  public List<Entry> inForce() {
    Set<String> withdrawn = new HashSet<>();
    List<Entry> counting = new ArrayList<>();
    for (int i = history.size() - 1; i >= 0; i--) {
      Entry entry = history.get(i);
      if (withdrawn.contains(entry.header().id())) {
        continue;
      }
      if (entry instanceof Entry.Withdrawal withdrawal) {
        withdrawn.add(withdrawal.entry());
      } else {
        counting.add(entry);
      }
    }
    Collections.reverse(counting);
    return List.copyOf(counting);
  }
}
