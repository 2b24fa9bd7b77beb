package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;

/**
 * Single readings that the logger didn't get, of each wire by itself.
 *
 * @param share share of the readings, 0 to 1
 */
public record Dropouts(double share) implements FrequencyEffect {

  @Override
  public void apply(Surroundings around, int wire, double[] frequencyHz) {
    RandomGenerator chance = Chance.of(around.seed(), "dropouts/" + wire);
    for (int i = 0; i < frequencyHz.length; i++) {
      if (chance.nextDouble() < share) {
        frequencyHz[i] = Double.NaN;
      }
    }
  }
}
