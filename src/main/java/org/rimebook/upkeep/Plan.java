package org.rimebook.upkeep;

/**
 * What a visit is planned by.
 *
 * @param coldestDegC coldest that is expected [°C]
 * @param marginDegC how much lower the mixture has to freeze [°C]
 * @param days how long the next charge has to last [d]
 */
public record Plan(double coldestDegC, double marginDegC, int days) {

  /** Own choice: tables, litres and mixing are each off by a degree or so. */
  public static final double USUAL_MARGIN_DEG_C = 3;

  /** Freezing point the mixture mustn't come above [°C]. */
  double limitDegC() {
    return coldestDegC - marginDegC;
  }
}
