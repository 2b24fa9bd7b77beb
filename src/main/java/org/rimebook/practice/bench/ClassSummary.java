package org.rimebook.practice.bench;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * Scores of the winters of one class and variant, put together: medians over the seeds, and shares
 * over all their spans.
 *
 * @param scenario the class
 * @param scores scores by seed; at least one
 */
public record ClassSummary(Scenario scenario, List<WinterScore> scores) {

  public ClassSummary {
    scores = List.copyOf(scores);
  }

  double median(ToDoubleFunction<WinterScore> value) {
    return new Median().evaluate(scores.stream().mapToDouble(value).toArray());
  }

  /** Median of the estimator's. */
  double estimator(ToDoubleFunction<Score> value) {
    return median(s -> value.applyAsDouble(s.estimator().score()));
  }

  /** Median of the estimator's in parts of the neutral aggregating filter's. */
  double toFilter(ToDoubleFunction<Score> value) {
    return median(s -> ratio(value, s.estimator(), s.filter()));
  }

  /** Median of the estimator's in parts of the oracle's. */
  double toOracle(ToDoubleFunction<Score> value) {
    return median(s -> ratio(value, s.estimator(), s.oracle()));
  }

  private static double ratio(ToDoubleFunction<Score> value, MethodScore one, MethodScore other) {
    return value.applyAsDouble(one.score()) / value.applyAsDouble(other.score());
  }

  Coverage hours() {
    return scores.stream().map(s -> s.honesty().hours()).reduce(Coverage.NONE, Coverage::plus);
  }

  Coverage days() {
    return scores.stream().map(s -> s.honesty().days()).reduce(Coverage.NONE, Coverage::plus);
  }

  Coverage seasons() {
    return scores.stream().map(s -> s.honesty().season()).reduce(Coverage.NONE, Coverage::plus);
  }
}
