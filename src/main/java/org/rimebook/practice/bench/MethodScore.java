package org.rimebook.practice.bench;

/**
 * Score of one method on one winter.
 *
 * @param method what it is called
 * @param score its score
 * @param seconds time it took [s]
 */
public record MethodScore(String method, Score score, double seconds) {}
