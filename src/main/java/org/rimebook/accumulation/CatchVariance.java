package org.rimebook.accumulation;

/**
 * What the variance of a catch is made of.
 *
 * @param levelsMm2 of the levels at the ends of wet stretches, less what their errors share; and of
 *     an analyst's own total, and of time of which the catch isn't known [mm²]
 * @param wanderingMm2 of the level, which moves of itself meanwhile [mm²]
 * @param commonMm2 of what all catch of the season may be off by together [mm²]
 */
public record CatchVariance(double levelsMm2, double wanderingMm2, double commonMm2) {

  /** The whole variance [mm²]. */
  public double totalMm2() {
    return levelsMm2 + wanderingMm2 + commonMm2;
  }
}
