package org.rimebook.practice.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BenchRunTest {

  private static final int DAYS = 30;

  private static WinterScore score(Scenario scenario, long seed) {
    return BenchRun.of(new Winter(scenario, Variant.PLAIN, seed, DAYS));
  }

  @Test
  void aCalmMonthIsToldAtLeastTwoAndAHalfTimesBetterThanByTheFilter() {
    WinterScore score = score(Scenario.CALM, 1);
    assertThat(score.estimator().score().hourlyRmseMm())
        .isPositive()
        .isLessThanOrEqualTo(0.40 * score.filter().score().hourlyRmseMm());
  }

  @Test
  void everyMethodIsScoredAndTheOracleInventsNothing() {
    WinterScore score = score(Scenario.COARSE, 2);
    assertThat(Stream.concat(Stream.of(score.oracle()), score.published().stream()))
        .extracting(MethodScore::method)
        .containsExactly(
            "oracle",
            "neutral aggregating filter",
            "three-wire pairwise",
            "0.2 mm high-water mark",
            "Gaussian smoothing with a threshold");
    assertThat(score.oracle().score().falseCatchMm()).isZero();
    assertThat(score.unknownPct()).isZero();
  }

  @Test
  void whatAnAnalystMarksIsNobodysFault() {
    // Without the notebook a dead wire, visits and caps cost the filter whole millimetres an hour.
    WinterScore score = score(Scenario.EVERYTHING, 3);
    assertThat(score.filter().score().hourlyRmseMm()).isLessThan(0.3);
    assertThat(score.oracle().score().hourlyRmseMm()).isLessThan(0.3);
  }

  @Test
  void aClassIsTheMedianOfItsWintersAndCountsTheirSpansTogether() {
    List<WinterScore> scores =
        Stream.of(1L, 2L, 3L).map(seed -> score(Scenario.COARSE, seed)).toList();
    ClassSummary summary = new ClassSummary(Scenario.COARSE, scores);
    double[] sorted =
        scores.stream().mapToDouble(s -> s.estimator().score().hourlyRmseMm()).sorted().toArray();
    assertThat(summary.estimator(Score::hourlyRmseMm)).isEqualTo(sorted[1]);
    assertThat(summary.hours().wet())
        .isEqualTo(scores.stream().mapToInt(s -> s.honesty().hours().wet()).sum());
    assertThat(summary.seasons().wet()).isEqualTo(3);
  }
}
