package org.rimebook.accumulation;

/**
 * What the estimator learnt from a season, and judged it by.
 *
 * @param nodeNoiseMm median over the season of the standard deviation of a node's level, as far as
 *     its neighbours don't share it [mm]; a node is the mean of the readings of a minute at most
 * @param noiseCorrelation factor by which the variance of quarter-hour means exceeds that of
 *     independent noise, from 1
 * @param wholeNoise whole variance of a node's noise over that part its neighbours don't share,
 *     from 1
 * @param dryDriftMmPerSqrtH how far a dry level wanders [mm/√h]
 * @param drift how the level moves while nothing falls
 * @param rehearsed what variances were multiplied by after the estimator was tried on its own
 *     answer
 * @param counterMm2 variance that the steps of the counters leave in every level [mm²]
 * @param commonShare standard uncertainty all catch by the level has in common, as a share of it
 */
public record Learnt(
    double nodeNoiseMm,
    double noiseCorrelation,
    double wholeNoise,
    double dryDriftMmPerSqrtH,
    DriftLaw drift,
    Rehearsed rehearsed,
    double counterMm2,
    double commonShare) {}
