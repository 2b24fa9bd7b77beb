package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.station.Interval;

/**
 * Something that wanders about zero with standard deviation 1 and forgets itself over a time
 * constant: a first-order autoregression on hourly nodes, straight between them.
 */
final class Wander {

  private static final long HOUR_MS = 3_600_000L;

  private final long fromMs;
  private final double[] nodes;

  Wander(Interval span, double memoryHours, RandomGenerator chance) {
    this.fromMs = span.fromMs();
    this.nodes = new double[Math.toIntExact(span.lengthMs() / HOUR_MS) + 2];
    double kept = StrictMath.exp(-1 / memoryHours);
    double fresh = StrictMath.sqrt(1 - kept * kept);
    nodes[0] = chance.nextGaussian();
    for (int i = 1; i < nodes.length; i++) {
      nodes[i] = kept * nodes[i - 1] + fresh * chance.nextGaussian();
    }
  }

  double at(long epochMs) {
    double hours = (double) (epochMs - fromMs) / HOUR_MS;
    int node = (int) Math.max(0, Math.min(nodes.length - 2.0, StrictMath.floor(hours)));
    double share = hours - node;
    return (1 - share) * nodes[node] + share * nodes[node + 1];
  }
}
