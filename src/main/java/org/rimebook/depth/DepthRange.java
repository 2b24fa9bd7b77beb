package org.rimebook.depth;

import org.rimebook.station.Gauge;

/**
 * Depths a wire can physically show. The bounds are this project's own choice: an empty bucket
 * reads a few millimetres either side of zero, and a full one holds a little more than its capacity
 * before it spills.
 *
 * @param lowestMm lowest depth [mm]
 * @param highestMm highest depth [mm]
 */
public record DepthRange(double lowestMm, double highestMm) {

  static final double LOWEST_MM = -10;
  static final double CAPACITY_MARGIN = 1.1;

  /** Stands in for a capacity the sheet doesn't give: larger than the usual buckets. */
  static final double ASSUMED_CAPACITY_MM = 1500;

  /** The range of a gauge. */
  public static DepthRange of(Gauge gauge) {
    return new DepthRange(
        LOWEST_MM, CAPACITY_MARGIN * gauge.capacityMm().orElse(ASSUMED_CAPACITY_MM));
  }

  /** Lowest frequency [Hz] in the range, or where the curve turns back if that comes first. */
  double lowestHz(CalibrationCurve curve) {
    return curve.reaches(lowestMm) ? curve.frequencyHz(lowestMm) : curve.turningHz();
  }

  /** Highest frequency [Hz] in the range, or where the curve turns back if that comes first. */
  double highestHz(CalibrationCurve curve) {
    return curve.reaches(highestMm) ? curve.frequencyHz(highestMm) : curve.turningHz();
  }
}
