package org.rimebook.totals.neighbour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the slope of a double-mass curve breaks: the test of Pettitt (1979, A non-parametric
 * approach to the change-point problem, Applied Statistics 28, 126–135) on the slopes of its steps.
 * The curve is cut into steps of about the same catch of the neighbours, so that each slope is
 * about as sure as the others.
 *
 * @param steps how many steps the curve was cut into
 * @param leastStepMm catch of the neighbours in the smallest step [mm]
 * @param atMs the end of the last step before the likeliest break [ms since epoch]
 * @param before slope up to there
 * @param after slope from there on
 * @param pValue how often chance alone gives as strong a break, by Pettitt's approximation
 */
public record SlopeBreak(
    int steps, double leastStepMm, long atMs, double before, double after, double pValue) {

  /** Fewest steps that are tested (own choice; the approximation is poor for fewer). */
  static final int FEWEST = 8;

  /** Most steps (own choice). */
  static final int MOST = 40;

  /** Least catch of the neighbours in a step [mm] (own choice). */
  static final double LEAST_MM = 5;

  /** Probability below which a break is called one (common practice). */
  private static final double SIGNIFICANT = 0.05;

  /** Whether the break is beyond chance, at the level of 5 %. */
  public boolean significant() {
    return pValue < SIGNIFICANT;
  }

  /** What brings the catch after the break to the slope before it (Searcy and Hardison 1960). */
  public double factor() {
    return before / after;
  }

  /**
   * Looks for a break.
   *
   * @return the likeliest break; empty when there is too little to test
   */
  static Optional<SlopeBreak> of(List<Pair> pairs) {
    List<Step> steps = Step.cut(pairs);
    if (steps.size() < FEWEST) {
      return Optional.empty();
    }
    double[] slopes = steps.stream().mapToDouble(Step::slope).toArray();
    int[] statistic = statistic(slopes);
    int at = 0;
    for (int t = 1; t < statistic.length; t++) {
      at = Math.abs(statistic[t]) > Math.abs(statistic[at]) ? t : at;
    }
    Step before = Step.sum(steps.subList(0, at + 1));
    Step after = Step.sum(steps.subList(at + 1, steps.size()));
    double leastMm = steps.stream().mapToDouble(Step::otherMm).min().orElseThrow();
    return Optional.of(
        new SlopeBreak(
            steps.size(),
            leastMm,
            before.toMs,
            before.slope(),
            after.slope(),
            pValue(Math.abs(statistic[at]), steps.size())));
  }

  /**
   * Pettitt's U for a change after each value but the last: how often a value up to there is larger
   * than one after, less how often it is smaller.
   */
  static int[] statistic(double... values) {
    int[] statistic = new int[values.length - 1];
    for (int t = 0; t < statistic.length; t++) {
      for (int i = 0; i <= t; i++) {
        for (int j = t + 1; j < values.length; j++) {
          statistic[t] += (int) Math.signum(values[i] - values[j]);
        }
      }
    }
    return statistic;
  }

  /** Pettitt's approximation, for n values: 2 exp(−6K² / (n³ + n²)), from memory. */
  static double pValue(int largest, int n) {
    double k = largest;
    double size = n;
    return Math.min(1, 2 * StrictMath.exp(-6 * k * k / (size * size * size + size * size)));
  }

  /** A step of the curve. */
  private record Step(long toMs, double ownMm, double otherMm) {

    double slope() {
      return ownMm / otherMm;
    }

    static Step sum(List<Step> steps) {
      double own = steps.stream().mapToDouble(Step::ownMm).sum();
      double other = steps.stream().mapToDouble(Step::otherMm).sum();
      return new Step(steps.get(steps.size() - 1).toMs, own, other);
    }

    /** Steps of about the same catch of the neighbours; what is left over joins the last. */
    static List<Step> cut(List<Pair> pairs) {
      double wholeMm = pairs.stream().mapToDouble(Pair::otherMm).sum();
      double stepMm = Math.max(LEAST_MM, wholeMm / MOST);
      List<Step> steps = new ArrayList<>();
      double own = 0;
      double other = 0;
      for (Pair pair : pairs) {
        own += pair.ownMm();
        other += pair.otherMm();
        if (other >= stepMm) {
          steps.add(new Step(pair.span().toMs(), own, other));
          own = 0;
          other = 0;
        }
      }
      if (!steps.isEmpty() && (own > 0 || other > 0)) {
        Step last = steps.remove(steps.size() - 1);
        long toMs = pairs.get(pairs.size() - 1).span().toMs();
        steps.add(new Step(toMs, last.ownMm + own, last.otherMm + other));
      }
      return steps;
    }
  }
}
