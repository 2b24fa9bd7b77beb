package org.rimebook.totals.neighbour;

import java.util.List;
import org.rimebook.totals.Quality;

/**
 * Rows of one table that the comparison doesn't use.
 *
 * @param rows rows there are
 * @param missing rows without a total that no later row holds
 * @param poor rows whose time is known in part only
 * @param suspect rows that are used although they are in doubt
 * @param unmatched usable rows for which the other tables have no such time
 */
public record LeftOut(int rows, int missing, int poor, int suspect, int unmatched) {

  static LeftOut of(List<DayCatch> days, List<Pair> pairs) {
    int missing = 0;
    int poor = 0;
    int suspect = 0;
    int unmatched = 0;
    for (DayCatch day : days) {
      boolean held = pairs.stream().anyMatch(pair -> pair.span().overlaps(day.span()));
      if (day.usable()) {
        suspect += held && day.quality() == Quality.SUSPECT ? 1 : 0;
        unmatched += held ? 0 : 1;
      } else if (day.quality() == Quality.POOR) {
        poor++;
      } else {
        missing += held ? 0 : 1;
      }
    }
    return new LeftOut(days.size(), missing, poor, suspect, unmatched);
  }
}
