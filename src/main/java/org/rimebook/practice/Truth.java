package org.rimebook.practice;

import org.rimebook.station.Interval;

/**
 * What really happened to the water of a simulated season. The catch is what entered the bucket
 * through the orifice, when it entered; what lay on a cap of snow counts when it slid in.
 *
 * @param fell precipitation when it fell onto the orifice or its cap
 * @param caught precipitation when it entered the bucket
 * @param chargeMm depth in the bucket at the start [mm]
 * @param finalMm depth in the bucket at the end [mm]
 * @param evaporatedMm lost to the air or through a leak [mm]
 * @param removedMm emptied at visits [mm]
 * @param pouredMm poured in at visits [mm]
 */
public record Truth(
    Precipitation fell,
    Precipitation caught,
    double chargeMm,
    double finalMm,
    double evaporatedMm,
    double removedMm,
    double pouredMm) {

  /** What entered the bucket in an interval [mm]. */
  public double catchMm(Interval interval) {
    return caught.amountMm(interval);
  }
}
