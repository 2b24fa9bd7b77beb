package org.rimebook.totals.neighbour;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.totals.Quality;

/**
 * A station's daily catch beside that of its neighbours (double-mass curve: WMO-No. 168, Guide to
 * Hydrological Practices, and Searcy and Hardison 1960, Double-mass curves, U.S. Geological Survey
 * Water-Supply Paper 1541-B, both from memory). Several neighbours count by their mean, in the time
 * that all of them have.
 *
 * @param pairs what both caught, in the order of time
 * @param own what of the station's table isn't used
 * @param others what of each neighbour's table isn't used, in their order
 * @param slopeBreak the likeliest break in slope; empty when there is too little to test
 * @param months month by month
 */
public record Comparison(
    List<Pair> pairs,
    LeftOut own,
    List<LeftOut> others,
    Optional<SlopeBreak> slopeBreak,
    List<MonthRatio> months) {

  public Comparison {
    pairs = List.copyOf(pairs);
    others = List.copyOf(others);
    months = List.copyOf(months);
  }

  /**
   * Compares.
   *
   * @param own the station's days, in any order
   * @param others those of each neighbour, at least one
   * @param offset the station's offset, for months
   */
  public static Comparison of(List<DayCatch> own, List<List<DayCatch>> others, ZoneOffset offset) {
    List<DayCatch> pattern = others.get(0);
    for (int n = 1; n < others.size(); n++) {
      pattern = mean(pattern, others.get(n), n);
    }
    List<Pair> pairs = Matching.of(own, pattern);
    return new Comparison(
        pairs,
        LeftOut.of(own, pairs),
        others.stream().map(days -> LeftOut.of(days, pairs)).toList(),
        SlopeBreak.of(pairs),
        MonthRatio.of(pairs, offset));
  }

  /** The mean of one more neighbour and of those before it. */
  private static List<DayCatch> mean(List<DayCatch> before, List<DayCatch> next, int count) {
    List<DayCatch> mean = new ArrayList<>();
    for (Pair pair : Matching.of(before, next)) {
      double mm = (pair.ownMm() * count + pair.otherMm()) / (count + 1);
      mean.add(new DayCatch(pair.span(), OptionalDouble.of(mm), Quality.GOOD));
    }
    return mean;
  }

  /** What the station caught in all pairs [mm]. */
  public double ownMm() {
    return pairs.stream().mapToDouble(Pair::ownMm).sum();
  }

  /** What the neighbours caught in all pairs [mm]. */
  public double otherMm() {
    return pairs.stream().mapToDouble(Pair::otherMm).sum();
  }

  /** The ratio of the two; empty when the neighbours caught nothing. */
  public OptionalDouble ratio() {
    return otherMm() > 0 ? OptionalDouble.of(ownMm() / otherMm()) : OptionalDouble.empty();
  }
}
