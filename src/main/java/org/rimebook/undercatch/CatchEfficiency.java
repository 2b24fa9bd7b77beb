package org.rimebook.undercatch;

import java.util.Optional;
import org.rimebook.station.WindShield;

/**
 * Share of the precipitation a gauge catches, CE = exp(−a·U·(1 − atan(b·T) + c)) with the wind U at
 * the height of the orifice and the air temperature T [°C] (Kochendorfer et al. 2017, Hydrol. Earth
 * Syst. Sci. 21, 3525–3542, doi 10.5194/hess-21-3525-2017, eq. 3, the sets for wind at gauge
 * height; coefficients from transcriptions of its table). It was fitted to intervals of 30 minutes
 * at eight sites, which is what it is for; a day with its mean wind isn't allowed. Not for wind
 * measured at 10 m: bring it to the orifice first.
 */
public enum CatchEfficiency {
  UNSHIELDED(0.0785, 0.729, 0.407),
  SINGLE_ALTER(0.0348, 1.366, 0.779);

  /** Wind speed beyond which the data behind both sets end [m/s]; U is held there. */
  public static final double LARGEST_WIND_MS = 7.2;

  private final double a;
  private final double b;
  private final double c;

  CatchEfficiency(double a, double b, double c) {
    this.a = a;
    this.b = b;
    this.c = c;
  }

  /** The function for what stands around the gauge; empty when none is published for it. */
  public static Optional<CatchEfficiency> of(WindShield shield) {
    return switch (shield) {
      case UNSHIELDED -> Optional.of(UNSHIELDED);
      case SINGLE_ALTER -> Optional.of(SINGLE_ALTER);
      case OTHER -> Optional.empty();
    };
  }

  /**
   * The catch efficiency.
   *
   * @param windMs wind speed at the height of the orifice [m/s], not negative; held at {@link
   *     #LARGEST_WIND_MS}
   * @param airTempC air temperature [°C]
   * @return share of 0 to 1; held at 1, which the formula passes for the unshielded gauge above 8.3
   *     °C; NaN when either input is NaN
   */
  public double at(double windMs, double airTempC) {
    double wind = Math.min(windMs, LARGEST_WIND_MS);
    return Math.min(1, StrictMath.exp(-a * wind * (1 - StrictMath.atan(b * airTempC) + c)));
  }
}
