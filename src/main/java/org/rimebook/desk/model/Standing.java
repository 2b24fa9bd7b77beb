package org.rimebook.desk.model;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;

/**
 * How each entry of a notebook stands.
 *
 * @param counting ids of the entries and withdrawals that count, the latest first
 * @param withdrawnBy the withdrawal that counts, by the id of the entry it withdraws
 */
record Standing(Set<String> counting, Map<String, Entry.Withdrawal> withdrawnBy) {

  /** Reads it off a notebook, by the rule of {@link Notebook#inForce()}. */
  static Standing of(Notebook notebook) {
    Set<String> counting = new LinkedHashSet<>();
    Map<String, Entry.Withdrawal> withdrawnBy = new HashMap<>();
    List<Entry> history = notebook.history();
    for (int i = history.size() - 1; i >= 0; i--) {
      Entry entry = history.get(i);
      String id = entry.header().id();
      if (withdrawnBy.containsKey(id)) {
        continue;
      }
      counting.add(id);
      if (entry instanceof Entry.Withdrawal withdrawal) {
        withdrawnBy.put(withdrawal.entry(), withdrawal);
      }
    }
    return new Standing(counting, withdrawnBy);
  }

  /** The withdrawal an entry fell to; empty while it counts. */
  Optional<Entry.Withdrawal> withdrawal(String id) {
    return counting.contains(id) ? Optional.empty() : Optional.ofNullable(withdrawnBy.get(id));
  }
}
