package org.rimebook.findings;

import java.util.Arrays;

/** Means of what is known of a channel. */
final class Means {

  private Means() {}

  /** Mean of what is known from a block up to another; NaN when nothing is. */
  static double of(double[] values, int from, int to) {
    int end = Math.min(values.length, to);
    return from >= end
        ? Double.NaN
        : Arrays.stream(values, from, end).filter(Double::isFinite).average().orElse(Double.NaN);
  }
}
