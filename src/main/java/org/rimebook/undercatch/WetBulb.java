package org.rimebook.undercatch;

import org.apache.commons.math3.analysis.solvers.BisectionSolver;

/**
 * The temperature that a wet bulb takes in moving air, below 0 °C one covered with ice: that of a
 * falling particle, whose surface loses by evaporation what heat it takes from the air.
 *
 * <p>Equations of the ASHRAE Handbook - Fundamentals, 2017, chapter 1: standard atmosphere (3),
 * saturation pressure over ice (5) and water (6), humidity ratio (20) and of the wet bulb (33, 35).
 */
final class WetBulb {

  private static final double KELVIN = 273.15;

  /** Molar mass of water over that of dry air. */
  private static final double MASS_RATIO = 0.621945;

  /** The bulb is no colder than the air by more than this, in air as dry as any [°C]. */
  private static final double LARGEST_DEPRESSION_C = 60;

  /** Air below 0 °C may hold more than ice in it would take: its bulb is a little warmer [°C]. */
  private static final double LARGEST_EXCESS_C = 5;

  private static final double ACCURACY_C = 1e-4;
  private static final int MOST_STEPS = 60;

  private WetBulb() {}

  /**
   * The temperature of the bulb [°C].
   *
   * @param airTempC air temperature [°C], −90 to 60
   * @param humidityPct relative humidity over water, as sensors tell it at any temperature (WMO-No.
   *     8) [%], 0 to 100
   * @param elevationM elevation above sea level [m], whose usual pressure is taken
   */
  static double degC(double airTempC, double humidityPct, double elevationM) {
    double pressurePa = pressurePa(elevationM);
    double vapourPa = humidityPct / 100 * overWaterPa(airTempC);
    double held = ratio(vapourPa, pressurePa);
    boolean ice = heldAt(0, airTempC, pressurePa, false) > held;
    return new BisectionSolver(ACCURACY_C)
        .solve(
            MOST_STEPS,
            bulbC -> heldAt(bulbC, airTempC, pressurePa, ice) - held,
            airTempC - LARGEST_DEPRESSION_C,
            airTempC + LARGEST_EXCESS_C);
  }

  /** Pressure of the standard atmosphere [Pa]. */
  static double pressurePa(double elevationM) {
    return 101_325 * StrictMath.pow(1 - 2.25577e-5 * elevationM, 5.2559);
  }

  /** What air holds whose bulb is that warm [kg/kg]. */
  private static double heldAt(double bulbC, double airTempC, double pressurePa, boolean ice) {
    double apart = 1.006 * (airTempC - bulbC);
    return ice
        ? ((2830 - 0.24 * bulbC) * ratio(overIcePa(bulbC), pressurePa) - apart)
            / (2830 + 1.86 * airTempC - 2.1 * bulbC)
        : ((2501 - 2.326 * bulbC) * ratio(overWaterPa(bulbC), pressurePa) - apart)
            / (2501 + 1.86 * airTempC - 4.186 * bulbC);
  }

  private static double ratio(double vapourPa, double pressurePa) {
    return MASS_RATIO * vapourPa / (pressurePa - vapourPa);
  }

  static double overIcePa(double degC) {
    double t = degC + KELVIN;
    return StrictMath.exp(
        -5.6745359e3 / t
            + 6.3925247
            - 9.677843e-3 * t
            + 6.2215701e-7 * t * t
            + 2.0747825e-9 * t * t * t
            - 9.484024e-13 * t * t * t * t
            + 4.1635019 * StrictMath.log(t));
  }

  /** Over water, below 0 °C water that hasn't frozen. */
  static double overWaterPa(double degC) {
    double t = degC + KELVIN;
    return StrictMath.exp(
        -5.8002206e3 / t
            + 1.3914993
            - 4.8640239e-2 * t
            + 4.1764768e-5 * t * t
            - 1.4452093e-8 * t * t * t
            + 6.5459673 * StrictMath.log(t));
  }
}
