package org.rimebook.practice;

/**
 * How near an estimate of hourly catch comes to the truth. An hour is wet when anything fell in it.
 *
 * @param seasonBiasPct estimate less truth, over the season, in parts of the truth [%]
 * @param hourlyRmseMm root mean square of the errors of all hours, wet and dry [mm]
 * @param dailyRmseMm the same for blocks of 24 hours from the first; an incomplete last block
 *     counts as it is [mm]
 * @param falseCatchMm catch estimated in dry hours; negative estimates don't set it off [mm]
 * @param missedCatchMm what fell in wet hours whose estimate prints as nothing [mm]
 */
public record Score(
    double seasonBiasPct,
    double hourlyRmseMm,
    double dailyRmseMm,
    double falseCatchMm,
    double missedCatchMm) {

  /** An estimate below this prints as 0.00 mm. */
  private static final double PRINTS_AS_NOTHING_MM = 0.005;

  /**
   * Scores an estimate.
   *
   * @param truthMm what fell, by hour [mm]
   * @param estimateMm what is said of the same hours [mm]
   * @throws IllegalArgumentException when the two don't hold the same number of hours, or nothing
   *     fell in any
   */
  public static Score of(double[] truthMm, double[] estimateMm) {
    Amounts.requireSameLength(truthMm, estimateMm);
    double fell = Amounts.total(truthMm);
    if (fell <= 0) {
      throw new IllegalArgumentException("nothing fell: there is no bias to speak of");
    }
    double falseCatch = 0;
    double missed = 0;
    for (int hour = 0; hour < truthMm.length; hour++) {
      if (truthMm[hour] <= 0) {
        falseCatch += Math.max(0, estimateMm[hour]);
      } else if (estimateMm[hour] < PRINTS_AS_NOTHING_MM) {
        missed += truthMm[hour];
      }
    }
    return new Score(
        100 * (Amounts.total(estimateMm) - fell) / fell,
        Amounts.rmsDifference(truthMm, estimateMm),
        Amounts.rmsDifference(Amounts.daily(truthMm), Amounts.daily(estimateMm)),
        falseCatch,
        missed);
  }
}
