package org.rimebook.practice;

import org.rimebook.station.Interval;

/**
 * Evaporation from a bucket whose oil film is broken or absent: more in sun and wind, none below −5
 * °C.
 *
 * @param span while the surface is open
 * @param mmPerDay size of the loss on a mean day [mm/d]
 */
public record Evaporation(Interval span, double mmPerDay) implements Loss {

  private static final double MS_PER_DAY = 86_400_000.0;
  private static final double NONE_BELOW_DEG_C = -5;

  @Override
  public double lossMm(Surroundings around, int index) {
    long stampMs = around.sampling().stampMs(index);
    double airDegC = around.weather().airTemperatureDegC(index);
    if (!span.contains(stampMs) || airDegC < NONE_BELOW_DEG_C) {
      return 0;
    }
    double sun = 0.3 + 2 * around.sunlight(index);
    double wind = 0.6 + 0.1 * around.weather().windMs(index);
    return mmPerDay * sun * wind * around.sampling().stepMs() / MS_PER_DAY;
  }
}
