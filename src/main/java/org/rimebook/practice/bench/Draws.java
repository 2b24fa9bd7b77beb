package org.rimebook.practice.bench;

import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.practice.Chance;
import org.rimebook.practice.bench.Setting.Range;

/** Draws from one stream of chance. */
final class Draws {

  private final RandomGenerator chance;

  Draws(long seed, String stream) {
    this.chance = Chance.of(seed, stream);
  }

  double between(double low, double high) {
    return low + (high - low) * chance.nextDouble();
  }

  double from(Range range) {
    return between(range.low(), range.high());
  }

  /** A value whose logarithm is evenly spread, from positive bounds. */
  double spread(double low, double high) {
    return low * StrictMath.exp(between(0, StrictMath.log(high / low)));
  }

  int below(int bound) {
    return chance.nextInt(bound);
  }

  boolean chance(double probability) {
    return chance.nextDouble() < probability;
  }

  <T> T oneOf(List<T> values) {
    return values.get(below(values.size()));
  }

  long seed() {
    return chance.nextLong();
  }
}
