package org.rimebook.accumulation;

import java.util.Optional;

/**
 * What the estimator makes of a season, and why.
 *
 * @param series the catch
 * @param learnt what it learnt from the season; empty when no level is usable
 * @param judgement noise and drift as judged at each time
 */
public record Estimate(CatchSeries series, Optional<Learnt> learnt, LevelJudgement judgement) {}
