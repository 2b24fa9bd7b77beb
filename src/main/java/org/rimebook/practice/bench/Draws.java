package org.rimebook.practice.bench;

import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.practice.Chance;
import org.rimebook.practice.bench.Setting.Range;

/** Draws from one stream of chance. */
public final class Draws {

  private final RandomGenerator chance;

  /** Draws of a seed from a stream of their own. */
  public Draws(long seed, String stream) {
    this.chance = Chance.of(seed, stream);
  }

  /** A value evenly spread. */
  public double between(double low, double high) {
    return low + (high - low) * chance.nextDouble();
  }

  double from(Range range) {
    return between(range.low(), range.high());
  }

  /** A value whose logarithm is evenly spread, from positive bounds. */
  public double spread(double low, double high) {
    return low * StrictMath.exp(between(0, StrictMath.log(high / low)));
  }

  /** A whole number from 0 up to a bound, which is outside. */
  public int below(int bound) {
    return chance.nextInt(bound);
  }

  /** Whether something of a probability happens. */
  public boolean chance(double probability) {
    return chance.nextDouble() < probability;
  }

  /** One of some values. */
  public <T> T oneOf(List<T> values) {
    return values.get(below(values.size()));
  }

  long seed() {
    return chance.nextLong();
  }
}
