package org.rimebook.notebook;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
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

  /** The entries that count: not withdrawn, and not withdrawals. In the order written. */
  public List<Entry> inForce() {
    Set<String> withdrawn =
        history.stream()
            .filter(e -> e instanceof Entry.Withdrawal)
            .map(e -> ((Entry.Withdrawal) e).entry())
            .collect(Collectors.toUnmodifiableSet());
    return history.stream()
        .filter(e -> !(e instanceof Entry.Withdrawal))
        .filter(e -> !withdrawn.contains(e.header().id()))
        .toList();
  }
}
