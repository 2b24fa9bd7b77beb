package org.rimebook.upkeep;

/** What water weighs, and how high it stands over an orifice. */
public final class Water {

  private static final double A1 = -3.983035;
  private static final double A2 = 301.797;
  private static final double A3 = 522528.9;
  private static final double A4 = 69.34881;
  private static final double A5 = 999.974950;
  private static final double HOTTEST_DEG_C = 40;

  private static final double CM2_PER_M2 = 10_000;

  private Water() {}

  /**
   * Density of clean water at 101.325 kPa. Tanaka et al. 2001, Metrologia 38, 301-309.
   *
   * @param degC temperature, 0 to 40 °C
   * @return density [kg/m³]
   * @throws IllegalArgumentException outside that range, for which the formula wasn't made
   */
  public static double densityKgPerM3(double degC) {
    if (!(degC >= 0 && degC <= HOTTEST_DEG_C)) {
      throw new IllegalArgumentException(
          "the density of water is known from 0 to 40 °C, not at " + degC + " °C");
    }
    double off = degC + A1;
    return A5 * (1 - off * off * (degC + A2) / (A3 * (degC + A4)));
  }

  /**
   * Depth a mass stands for: 1 kg/m² is 1 mm by definition.
   *
   * @param kg mass [kg]
   * @param orificeAreaCm2 area of the orifice [cm²]
   * @return depth [mm]
   */
  public static double depthMm(double kg, double orificeAreaCm2) {
    return kg * CM2_PER_M2 / orificeAreaCm2;
  }

  /** Mass that a depth stands for [kg]. */
  public static double massKg(double depthMm, double orificeAreaCm2) {
    return depthMm * orificeAreaCm2 / CM2_PER_M2;
  }
}
