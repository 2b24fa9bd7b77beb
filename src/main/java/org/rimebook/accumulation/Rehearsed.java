package org.rimebook.accumulation;

/**
 * What the variances that the estimator states are multiplied by, after it was tried on its own
 * answer.
 *
 * @param withinFactor for levels within wet spells, from hours
 * @param dryFactor for dry levels, the ends of wet spells among them, and for their wandering, from
 *     days
 */
public record Rehearsed(double withinFactor, double dryFactor) {

  /** Of a season too short to tell. */
  static final Rehearsed NONE = new Rehearsed(1, 1);

  /**
   * How well the levels at the ends of a link are known. How far their errors are the same stays.
   *
   * @param link the link
   * @param stated what the smoother says of them
   * @param caught what fell
   */
  CatchSeries.Ends ends(int link, CatchSeries.Ends stated, WetSpells.Catch caught) {
    double start = caught.inside(link) ? withinFactor : dryFactor;
    double end = caught.inside(link + 1) ? withinFactor : dryFactor;
    return new CatchSeries.Ends(
        start * stated.startMm2(),
        end * stated.endMm2(),
        Math.sqrt(start / end) * stated.gain(),
        stated.doubtMm());
  }
}
