package org.rimebook.practice.bench;

/**
 * How near an estimate comes to the truth. An hour is wet when anything fell in it; hours that have
 * only a common total count as one span, once.
 *
 * @param seasonBiasPct estimate less truth, over the season, in parts of the truth [%]
 * @param hourlyRmseMm root mean square of the errors of all hours, wet and dry [mm]
 * @param dailyRmseMm the same for climatological days [mm]
 * @param falseCatchMm catch estimated in dry hours, as for half a year; negative estimates don't
 *     set it off [mm]
 * @param missedCatchMm what fell in wet hours whose estimate prints as nothing, as for half a year
 *     [mm]
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
   * @param hours hours of the season
   * @param days days of the season
   * @param perHalfYear half a year in parts of the season
   * @throws IllegalArgumentException when nothing fell in any hour
   */
  static Score of(Pairs hours, Pairs days, double perHalfYear) {
    if (hours.fellMm() <= 0) {
      throw new IllegalArgumentException("nothing fell: there is no bias to speak of");
    }
    double falseCatch = 0;
    double missed = 0;
    for (int hour = 0; hour < hours.size(); hour++) {
      double estimateMm = hours.estimateMm()[hour];
      if (!hours.wet(hour)) {
        falseCatch += Math.max(0, estimateMm);
      } else if (estimateMm < PRINTS_AS_NOTHING_MM) {
        missed += hours.truthMm()[hour];
      }
    }
    return new Score(
        100 * hours.totalErrorMm() / hours.fellMm(),
        hours.rmseMm(),
        days.rmseMm(),
        falseCatch * perHalfYear,
        missed * perHalfYear);
  }
}
