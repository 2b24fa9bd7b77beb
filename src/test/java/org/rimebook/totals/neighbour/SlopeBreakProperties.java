package org.rimebook.totals.neighbour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.inference.MannWhitneyUTest;

class SlopeBreakProperties {

  /** Pettitt's U at a place is twice the U of Mann and Whitney there, less the product of sizes. */
  @Property(tries = 200)
  void theStatisticIsThatOfMannAndWhitneyAtEveryPlace(
      @ForAll @Size(min = 2, max = 30) List<@IntRange(min = 0, max = 9) Integer> values) {
    double[] numbers = values.stream().mapToDouble(Integer::doubleValue).toArray();
    int[] statistic = SlopeBreak.statistic(numbers);
    for (int t = 0; t < statistic.length; t++) {
      double[] before = Arrays.copyOfRange(numbers, 0, t + 1);
      double[] after = Arrays.copyOfRange(numbers, t + 1, numbers.length);
      double larger = new MannWhitneyUTest().mannWhitneyU(before, after);
      int sizes = before.length * after.length;
      assertThat((double) Math.abs(statistic[t])).isCloseTo(2 * larger - sizes, within(1e-9));
    }
  }

  @Property(tries = 200)
  void theProbabilityFallsWithTheStatisticFromOne(
      @ForAll @IntRange(min = 8, max = 40) int n, @ForAll @IntRange(max = 300) int k) {
    assertThat(SlopeBreak.pValue(k, n)).isBetween(0.0, 1.0);
    assertThat(SlopeBreak.pValue(k + 1, n)).isLessThanOrEqualTo(SlopeBreak.pValue(k, n));
    assertThat(SlopeBreak.pValue(0, n)).isEqualTo(1);
  }

  @Property(tries = 100)
  void aStationThatCatchesAFixedShareHasThatRatioAndNoBreak(
      @ForAll @Size(min = 60, max = 90) List<@DoubleRange(min = 0, max = 30) Double> other,
      @ForAll @DoubleRange(min = 0.1, max = 3) double share) {
    List<DayCatch> pattern = Days.list(other.size(), other::get);
    List<DayCatch> own = Days.list(other.size(), day -> share * other.get(day));
    Comparison found = Comparison.of(own, List.of(pattern), ZoneOffset.UTC);
    found.ratio().ifPresent(ratio -> assertThat(ratio).isCloseTo(share, within(1e-9)));
    found.slopeBreak().ifPresent(b -> assertThat(b.factor()).isCloseTo(1, within(1e-9)));
  }

  @Property(tries = 100)
  void noCatchIsCountedTwiceOrLostWhateverTheRunsAndTheOrderOfRows(
      @ForAll @Size(min = 1, max = 20) List<@IntRange(min = 1, max = 4) Integer> ownRuns,
      @ForAll @Size(min = 1, max = 20) List<@IntRange(min = 1, max = 4) Integer> otherRuns,
      @ForAll long seed) {
    List<DayCatch> own = runs(ownRuns);
    List<DayCatch> other = runs(otherRuns);
    List<Pair> inOrder = Matching.of(own, other);
    Collections.shuffle(own, new Random(seed));
    Collections.shuffle(other, new Random(seed));
    assertThat(Matching.of(own, other)).isEqualTo(inOrder);
    long last = Long.MIN_VALUE;
    for (Pair pair : inOrder) {
      assertThat(pair.span().fromMs()).isGreaterThanOrEqualTo(last);
      last = pair.span().toMs();
      assertThat(pair.ownMm()).isEqualTo(pair.otherMm());
      assertThat(pair.ownMm()).isEqualTo((double) pair.span().lengthMs() / Days.DAY_MS);
    }
  }

  /** Runs of days without a hole, a millimetre a day. */
  private static List<DayCatch> runs(List<Integer> lengths) {
    List<DayCatch> days = new ArrayList<>();
    int from = 0;
    for (int length : lengths) {
      days.add(Days.caught(from, from + length, length));
      from += length;
    }
    return days;
  }
}
