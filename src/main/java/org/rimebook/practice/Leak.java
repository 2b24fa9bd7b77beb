package org.rimebook.practice;

import org.rimebook.station.Interval;

/**
 * A bucket that leaks at a steady rate.
 *
 * @param span while it leaks
 * @param mmPerDay rate [mm/d]
 */
public record Leak(Interval span, double mmPerDay) implements Loss {

  private static final double MS_PER_DAY = 86_400_000.0;

  @Override
  public double lossMm(Surroundings around, int index) {
    boolean leaks = span.contains(around.sampling().stampMs(index));
    return leaks ? mmPerDay * around.sampling().stepMs() / MS_PER_DAY : 0;
  }
}
