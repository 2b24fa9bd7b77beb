package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;

/**
 * Wires that go up and down once a day whatever the sun's height, more under a clear sky than under
 * cloud, each in its own measure and an hour or two apart; the first one, on the north side, least.
 *
 * @param amplitudeMm mean amplitude of the other wires under a clear sky [mm]
 */
public record DailyWave(double amplitudeMm) implements DepthEffect {

  private static final double MS_PER_DAY = 86_400_000.0;
  private static final double NORTHERN_SHARE = 0.25;
  private static final double CLOUD_SHARE = 0.8;
  private static final double EARLIEST_RISE_HOUR = 8;
  private static final double HOURS_APART = 2;

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    RandomGenerator chance = Chance.of(around.seed(), "daily wave/" + wire);
    double own = amplitudeMm * (0.7 + 0.6 * chance.nextDouble());
    double gain = wire == 0 ? NORTHERN_SHARE * own : own;
    double rise = (EARLIEST_RISE_HOUR + HOURS_APART * chance.nextDouble()) / 24;
    double offsetMs = around.sheet().utcOffset().getTotalSeconds() * 1000.0;
    for (int i = 0; i < depthMm.length; i++) {
      double day = (around.sampling().stampMs(i) + offsetMs) / MS_PER_DAY - rise;
      double clear = 1 - CLOUD_SHARE * around.weather().unsettled(i);
      depthMm[i] += gain * clear * StrictMath.sin(2 * StrictMath.PI * (day - StrictMath.rint(day)));
    }
  }
}
