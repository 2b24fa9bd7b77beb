package org.rimebook.practice.bench;

import java.util.List;

/**
 * Scores of all methods on one winter.
 *
 * @param winter the winter
 * @param estimator score of the estimator
 * @param oracle score of the oracle
 * @param published scores of the published methods, the neutral aggregating filter first
 * @param honesty how honest the estimator's uncertainty is
 * @param unknownPct share of the time that the estimator has no total for; it isn't scored [%]
 */
public record WinterScore(
    Winter winter,
    MethodScore estimator,
    MethodScore oracle,
    List<MethodScore> published,
    Honesty honesty,
    double unknownPct) {

  public WinterScore {
    published = List.copyOf(published);
  }

  /** The neutral aggregating filter's. */
  MethodScore filter() {
    return published.get(0);
  }

  /**
   * How honest a stated uncertainty is.
   *
   * @param hours wet hours within it
   * @param days wet days within it
   * @param season the season's total within it
   * @param seasonErrorInU error of the season's total in its own standard uncertainty, unsigned
   */
  public record Honesty(Coverage hours, Coverage days, Coverage season, double seasonErrorInU) {}
}
