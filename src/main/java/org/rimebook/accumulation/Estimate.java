package org.rimebook.accumulation;

import java.util.Optional;
import java.util.function.Supplier;

/** What the estimator makes of a season, and why. Immutable. */
public final class Estimate {

  private final CatchSeries series;
  private final Optional<Learnt> learnt;
  private final Supplier<LevelJudgement> judgement;
  private final Optional<CatchBasis> basis;

  /**
   * @param judgement gives noise and drift as judged; a revision joins them when asked
   * @param basis what a revision takes up; empty where there is nothing to take up
   */
  Estimate(
      CatchSeries series,
      Optional<Learnt> learnt,
      Supplier<LevelJudgement> judgement,
      Optional<CatchBasis> basis) {
    this.series = series;
    this.learnt = learnt;
    this.judgement = judgement;
    this.basis = basis;
  }

  /** The catch. */
  public CatchSeries series() {
    return series;
  }

  /** What it learnt from the season; empty when no level is usable. */
  public Optional<Learnt> learnt() {
    return learnt;
  }

  /** Noise and drift as judged at each time. */
  public LevelJudgement judgement() {
    return judgement.get();
  }

  Optional<CatchBasis> basis() {
    return basis;
  }
}
