package org.rimebook.desk.model;

import java.util.Optional;
import org.rimebook.totals.TotalRow;

/**
 * A row of the totals table.
 *
 * @param total the total
 * @param before the total as last settled, when this one differs from it
 * @param lacking what a month lacks, in words; empty text when nothing, and for hours and days
 */
public record TotalsRow(TotalRow total, Optional<TotalRow> before, String lacking) {

  /** Whether the total differs from the last settled one. */
  public boolean changed() {
    return before.isPresent();
  }
}
