/**
 * Simulated seasons with known truth: weather, storms, a bucket, its wires and its logger, each a
 * small model of its own, composed by {@link org.rimebook.practice.SeasonBuilder}. Writes the
 * season folders under {@code sample-sets} and what really fell beside them. Everything is drawn
 * from a seed and comes out the same on every machine; nothing here reads a real record or computes
 * a total.
 */
package org.rimebook.practice;
