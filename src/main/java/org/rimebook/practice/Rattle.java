package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.station.Interval;

/**
 * Something touches the bucket and shakes every wire alike: a hand at a visit, rime that has grown
 * from the shield.
 *
 * @param span while it touches
 * @param sizeMm standard deviation of what it adds [mm]
 */
public record Rattle(Interval span, double sizeMm) implements DepthEffect {

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    RandomGenerator chance = Chance.of(around.seed(), "rattle/" + span.fromMs());
    for (int i = 0; i < depthMm.length; i++) {
      if (span.contains(around.sampling().stampMs(i))) {
        depthMm[i] += sizeMm * chance.nextGaussian();
      }
    }
  }
}
