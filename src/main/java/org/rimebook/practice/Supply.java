package org.rimebook.practice;

import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.station.Interval;

/** The supply: charged by the sun, sagging for a day and a half before each power failure. */
final class Supply {

  private static final double RESTING_V = 12.4;
  private static final double CHARGING_V = 1.6;
  private static final double SAG_V = 1.3;
  private static final double SAG_MS = 36 * 3_600_000.0;
  private static final double CHARGE_MEMORY_MS = 4 * 3_600_000.0;
  private static final double NOISE_V = 0.01;

  private Supply() {}

  /** Voltage at each reading [V]. */
  static double[] volts(Surroundings around, List<Interval> failures) {
    RandomGenerator chance = Chance.of(around.seed(), "supply");
    double[] volts = new double[around.sampling().size()];
    double kept = StrictMath.exp(-around.sampling().stepMs() / CHARGE_MEMORY_MS);
    double charge = 0;
    for (int i = 0; i < volts.length; i++) {
      charge = kept * charge + (1 - kept) * around.sunlight(i);
      volts[i] = RESTING_V + CHARGING_V * charge + NOISE_V * chance.nextGaussian();
      for (Interval failure : failures) {
        double ahead = failure.fromMs() - around.sampling().stampMs(i);
        if (ahead >= 0 && ahead < SAG_MS) {
          volts[i] -= SAG_V * (1 - ahead / SAG_MS);
        }
      }
    }
    return volts;
  }
}
