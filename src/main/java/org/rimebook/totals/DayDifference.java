package org.rimebook.totals;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.Stream;

/**
 * A day whose printed total or its quality differs between two sets of totals of one record.
 *
 * @param mine the day in the first
 * @param theirs the day in the other
 */
public record DayDifference(TotalRow mine, TotalRow theirs) {

  /**
   * The days that differ, in order.
   *
   * @param mine the first totals
   * @param theirs the other totals, of the same record at the same resolution
   * @throws IllegalArgumentException when the resolutions differ
   */
  public static List<DayDifference> between(Totals mine, Totals theirs) {
    if (mine.resolution() != theirs.resolution()) {
      throw new IllegalArgumentException("totals of two resolutions can't be compared");
    }
    Map<Long, TotalRow> others = new HashMap<>();
    theirs.daily().forEach(day -> others.put(day.interval().fromMs(), day));
    return mine.daily().stream()
        .flatMap(
            day ->
                Stream.ofNullable(others.get(day.interval().fromMs()))
                    .map(other -> new DayDifference(day, other)))
        .filter(DayDifference::differs)
        .toList();
  }

  private boolean differs() {
    return !mine.catchUnits().equals(theirs.catchUnits())
        || mine.quality() != theirs.quality()
        || !mine.accumulatedSinceMs().equals(theirs.accumulatedSinceMs());
  }

  /** Theirs less mine in whole units; empty when either is missing. */
  public OptionalLong units() {
    return mine.catchUnits().isPresent() && theirs.catchUnits().isPresent()
        ? OptionalLong.of(theirs.catchUnits().getAsLong() - mine.catchUnits().getAsLong())
        : OptionalLong.empty();
  }
}
