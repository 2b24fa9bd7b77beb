package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.station.Interval;

/**
 * One wire that fails: first it jumps about, then there is no frequency at all.
 *
 * @param wire index of the wire
 * @param span from the first jump to the repair
 * @param erraticMs how long it jumps about before it is silent [ms]
 */
public record DeadWire(int wire, Interval span, long erraticMs) implements FrequencyEffect {

  private static final double WRONG_SHARE = 0.4;
  private static final double LOWEST_HZ = 200;
  private static final double RANGE_HZ = 4000;

  @Override
  public void apply(Surroundings around, int wire, double[] frequencyHz) {
    if (wire != this.wire) {
      return;
    }
    RandomGenerator chance = Chance.of(around.seed(), "dead wire/" + wire);
    for (int i = 0; i < frequencyHz.length; i++) {
      long stampMs = around.sampling().stampMs(i);
      if (!span.contains(stampMs)) {
        continue;
      }
      if (stampMs >= span.fromMs() + erraticMs) {
        frequencyHz[i] = Double.NaN;
      } else if (chance.nextDouble() < WRONG_SHARE) {
        frequencyHz[i] = LOWEST_HZ + RANGE_HZ * chance.nextDouble();
      }
    }
  }
}
