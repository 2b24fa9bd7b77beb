package org.rimebook.undercatch;

/**
 * Phase of precipitation. A label: no total depends on it.
 *
 * <p>With humidity, by the psychrometric method: a falling particle has the temperature of a
 * {@linkplain WetBulb wet or iced bulb}, and by it the share of rain is 1/(1 + 2.6300006 ·
 * 0.09336^T), the curve for hours of Harder and Pomeroy 2013, Hydrol. Process. 27, 1901–1914. They
 * reckon the particle's temperature with the diffusivity of still air, whose constants couldn't be
 * checked; by those remembered the bulb is warmer by 0.1 °C at most from 80 % of humidity on, and
 * by 0.4 °C at 40 %. From 5 to 95 % of rain is mixed, our own choice.
 *
 * <p>Else by air temperature alone: solid below −2 °C, liquid above 2 °C, mixed between (the
 * classes of Kochendorfer et al. 2017, Hydrol. Earth Syst. Sci. 21, 3525–3542).
 */
public enum Phase {
  RAIN("rain"),
  MIXED("mixed"),
  SNOW("snow");

  private static final double HALF_WIDTH_C = 2;
  private static final double CURVE_B = 2.6300006;
  private static final double CURVE_C = 0.09336;
  private static final double LITTLE = 0.05;
  private static final double SATURATED_PCT = 100;

  private final String code;

  Phase(String code) {
    this.code = code;
  }

  /**
   * The phase at an air temperature.
   *
   * @param airTempC air temperature [°C]
   * @throws IllegalArgumentException when the temperature is NaN, which has no phase
   */
  public static Phase at(double airTempC) {
    if (Double.isNaN(airTempC)) {
      throw new IllegalArgumentException("no phase without an air temperature");
    }
    if (airTempC < -HALF_WIDTH_C) {
      return SNOW;
    }
    return airTempC > HALF_WIDTH_C ? RAIN : MIXED;
  }

  /**
   * The phase in air of known humidity.
   *
   * @param airTempC air temperature [°C], −90 to 60
   * @param humidityPct relative humidity over water [%], not negative; more than 100 counts as that
   * @param elevationM elevation above sea level [m]; 0 where it isn't known, which at 2000 m makes
   *     the bulb 0.2 °C too warm in air of 80 % and half a degree in air of 60 %
   * @throws IllegalArgumentException when the temperature or the humidity is NaN
   */
  public static Phase at(double airTempC, double humidityPct, double elevationM) {
    if (Double.isNaN(airTempC) || Double.isNaN(humidityPct)) {
      throw new IllegalArgumentException("no phase without air temperature and humidity");
    }
    double bulbC = WetBulb.degC(airTempC, Math.min(SATURATED_PCT, humidityPct), elevationM);
    double rain = rainShare(bulbC);
    if (rain < LITTLE) {
      return SNOW;
    }
    return rain > 1 - LITTLE ? RAIN : MIXED;
  }

  /** Share of rain among particles that warm [°C]. */
  static double rainShare(double particleC) {
    return 1 / (1 + CURVE_B * StrictMath.pow(CURVE_C, particleC));
  }

  /** The word in the tables. */
  public String code() {
    return code;
  }
}
