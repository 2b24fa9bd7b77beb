/**
 * The bench: classes of simulated winters with known truth, and the score of an estimator on them
 * beside the published methods and an oracle. It runs what {@code season} computes as it is;
 * nothing here takes part in computing a total.
 */
package org.rimebook.practice.bench;
