package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;

/**
 * Single readings struck by interference.
 *
 * @param perDay mean number a wire and day
 * @param sizeHz standard deviation of their size [Hz]
 */
public record Spikes(double perDay, double sizeHz) implements FrequencyEffect {

  private static final double MS_PER_DAY = 86_400_000.0;

  @Override
  public void apply(Surroundings around, int wire, double[] frequencyHz) {
    RandomGenerator chance = Chance.of(around.seed(), "spikes/" + wire);
    double share = perDay * around.sampling().stepMs() / MS_PER_DAY;
    for (int i = 0; i < frequencyHz.length; i++) {
      if (chance.nextDouble() < share) {
        frequencyHz[i] = Math.max(0, frequencyHz[i] + sizeHz * chance.nextGaussian());
      }
    }
  }
}
