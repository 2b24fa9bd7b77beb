package org.rimebook.practice;

import org.rimebook.station.Interval;

/**
 * A visit that takes the bucket off, empties it or not, and pours something in. In the second third
 * of the visit the bucket is off and the wires carry nothing.
 *
 * @param interval the visit
 * @param emptied whether the bucket is emptied first
 * @param pouredMm charge and oil poured in [mm of water over the orifice]
 */
public record Visit(Interval interval, boolean emptied, double pouredMm) {

  private static final double CM3_PER_L = 1000;
  private static final double MM_PER_CM = 10;

  /** Depth that a volume has over the orifice [mm]; 0.2 L over 200 cm² stand 10 mm high. */
  public static double depthMm(double litres, double orificeAreaCm2) {
    return litres * CM3_PER_L / orificeAreaCm2 * MM_PER_CM;
  }

  long liftedMs() {
    return interval.fromMs() + interval.lengthMs() / 3;
  }

  boolean offAt(long epochMs) {
    return epochMs >= liftedMs() && epochMs < interval.fromMs() + 2 * interval.lengthMs() / 3;
  }
}
