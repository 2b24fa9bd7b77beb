package org.rimebook.accumulation;

/**
 * What the estimator had in hand when a season was done, for a revision of part of it to take up.
 *
 * @param nodes the level as read
 * @param noise what was judged of each node's level on its own
 * @param covariates what may move it
 * @param model how it drifts
 * @param wet probability of each link to be wet by which the drift was taken off
 * @param fit what came of it
 */
record CatchBasis(
    LevelNodes nodes,
    NodeNoise.Judged noise,
    Covariates covariates,
    DriftModel model,
    double[] wet,
    CatchEstimator.Fit fit) {}
