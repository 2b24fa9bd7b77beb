package org.rimebook.desk.model;

import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Totals;

/**
 * What follows from a season.
 *
 * @param result catch and what led to it
 * @param totals the totals
 * @param state how it stands to the notebook
 */
public record Computed(SeasonResult result, Totals totals, State state) {

  /** How far what is shown follows from the notebook. */
  public enum State {
    /** With an entry that isn't in the notebook yet. */
    FORESEEN,
    /** With all entries, close; the exact one is on its way. */
    CLOSE,
    /** Exactly what the command line computes. */
    SETTLED
  }
}
