package org.rimebook.totals;

import java.util.List;

/**
 * The totals of a season.
 *
 * @param resolution resolution of all totals
 * @param hourly every hour the record touches, in order
 * @param daily every climatological day the record touches, in order
 */
public record Totals(Resolution resolution, List<TotalRow> hourly, List<TotalRow> daily) {

  public Totals {
    hourly = List.copyOf(hourly);
    daily = List.copyOf(daily);
  }

  /** The season's catch in whole units: the sum of the hours and of the days that have a total. */
  public long seasonUnits() {
    return hourly.stream().mapToLong(row -> row.catchUnits().orElse(0)).sum();
  }
}
