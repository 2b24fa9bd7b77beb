package org.rimebook.undercatch;

/**
 * Wind at another height by the logarithmic law of a neutral surface layer, U(h) = U(H) · ln(h/z0)
 * / ln(H/z0), heights above the snow surface and without displacement (Goodison, Louie and Yang
 * 1998, WMO/TD-No. 872, without its term for obstacles).
 */
public final class WindProfile {

  /** Roughness length of a snow surface [m]; common practice. */
  public static final double SNOW_ROUGHNESS_M = 0.01;

  private WindProfile() {}

  /**
   * The wind at another height.
   *
   * @param speedMs wind speed at {@code fromHeightM} [m/s]; NaN stays NaN
   * @param fromHeightM height of the anemometer [m], above {@code roughnessM}
   * @param toHeightM height wanted [m], above {@code roughnessM}
   * @param roughnessM roughness length z0 [m], positive
   * @return wind speed at {@code toHeightM} [m/s]
   * @throws IllegalArgumentException when a height isn't above the roughness length, where the law
   *     doesn't hold
   */
  public static double toHeight(
      double speedMs, double fromHeightM, double toHeightM, double roughnessM) {
    boolean holds = roughnessM > 0 && fromHeightM > roughnessM && toHeightM > roughnessM;
    if (!holds) {
      throw new IllegalArgumentException(
          "the wind profile needs heights above its roughness length: from "
              + fromHeightM
              + " m to "
              + toHeightM
              + " m over "
              + roughnessM
              + " m");
    }
    return speedMs
        * StrictMath.log(toHeightM / roughnessM)
        / StrictMath.log(fromHeightM / roughnessM);
  }
}
