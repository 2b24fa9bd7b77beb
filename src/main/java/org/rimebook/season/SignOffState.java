package org.rimebook.season;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rimebook.notebook.Entry;

/** Whether the totals are those somebody signed for. */
public enum SignOffState {
  /** Nobody has signed. */
  NONE("none"),
  /** The last sign-off names this record, this sheet and these entries. */
  CURRENT("current"),
  /** Something changed after the last sign-off. */
  STALE("stale");

  private final String code;

  SignOffState(String code) {
    this.code = code;
  }

  /** The word in {@code season.json}. */
  public String code() {
    return code;
  }

  /** The state of a season. */
  public static SignOffState of(Season season) {
    List<Entry> inForce = season.notebook().inForce();
    SignOffState state = NONE;
    Set<String> counting = new HashSet<>();
    for (Entry entry : inForce) {
      if (!(entry instanceof Entry.SignOff)) {
        counting.add(entry.header().id());
      }
    }
    for (Entry entry : inForce) {
      if (entry instanceof Entry.SignOff signed) {
        boolean same =
            signed.recordSha256().equals(season.digests().record())
                && signed.stationSha256().equals(season.digests().station())
                && counting.equals(Set.copyOf(signed.entries()));
        state = same ? CURRENT : STALE;
      }
    }
    return state;
  }
}
