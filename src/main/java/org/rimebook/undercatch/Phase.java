package org.rimebook.undercatch;

/**
 * Phase of precipitation by air temperature alone: solid below −2 °C, liquid above 2 °C, mixed
 * between (the classes of Kochendorfer et al. 2017, Hydrol. Earth Syst. Sci. 21, 3525–3542). A
 * label: no total depends on it. Humidity isn't used although it would tell more between 0 and 4
 * °C: the constants of the psychrometric methods (Harder and Pomeroy 2013, Hydrol. Process. 27,
 * 1901–1914, and the wet bulb) couldn't all be checked against their sources.
 */
public enum Phase {
  RAIN("rain"),
  MIXED("mixed"),
  SNOW("snow");

  private static final double HALF_WIDTH_C = 2;

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

  /** The word in the tables. */
  public String code() {
    return code;
  }
}
