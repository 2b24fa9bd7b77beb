package org.rimebook.totals.neighbour;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What both caught in the pairs of one month.
 *
 * @param month the month, station time; a day belongs to the month it begins in, and several days
 *     to that of their last
 * @param pairs how many pairs
 * @param ownMm what the station caught [mm]
 * @param otherMm what the neighbours caught [mm]
 */
public record MonthRatio(YearMonth month, int pairs, double ownMm, double otherMm) {

  private static final long DAY_MS = 86_400_000;

  /** The ratio of the two; empty when the neighbours caught nothing. */
  public OptionalDouble ratio() {
    return otherMm > 0 ? OptionalDouble.of(ownMm / otherMm) : OptionalDouble.empty();
  }

  static List<MonthRatio> of(List<Pair> pairs, ZoneOffset offset) {
    Map<YearMonth, List<Pair>> byMonth = new LinkedHashMap<>();
    for (Pair pair : pairs) {
      Instant lastDay = Instant.ofEpochMilli(pair.span().toMs() - DAY_MS);
      YearMonth month = YearMonth.from(lastDay.atOffset(offset));
      byMonth.computeIfAbsent(month, m -> new ArrayList<>()).add(pair);
    }
    List<MonthRatio> months = new ArrayList<>();
    byMonth.forEach(
        (month, of) ->
            months.add(
                new MonthRatio(
                    month,
                    of.size(),
                    of.stream().mapToDouble(Pair::ownMm).sum(),
                    of.stream().mapToDouble(Pair::otherMm).sum())));
    return months;
  }
}
