package org.rimebook.totals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

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

  /**
   * The season's catch in whole units: the sum of the hours, and of the days, that have a total;
   * empty when none has.
   */
  public OptionalLong seasonUnits() {
    return hourly.stream()
        .map(TotalRow::catchUnits)
        .filter(OptionalLong::isPresent)
        .mapToLong(OptionalLong::getAsLong)
        .boxed()
        .reduce(Long::sum)
        .map(OptionalLong::of)
        .orElse(OptionalLong.empty());
  }

  /** What the adjusted hours come to; empty when no hour could be adjusted. */
  public Optional<AdjustedTotal> adjusted() {
    List<TotalRow> adjusted = hourly.stream().filter(h -> h.adjustedUnits().isPresent()).toList();
    return adjusted.isEmpty() ? Optional.empty() : Optional.of(AdjustedTotal.of(adjusted));
  }
}
