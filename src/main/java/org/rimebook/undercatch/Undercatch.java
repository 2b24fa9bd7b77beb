package org.rimebook.undercatch;

import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.station.Channel;
import org.rimebook.station.StationSheet;

/**
 * The adjustment for wind undercatch at one station.
 *
 * @param efficiency the catch efficiency of the gauge
 * @param windHeightM height of the anemometer above ground [m], above the roughness length
 * @param rimHeightM height of the orifice above ground [m], above the roughness length
 */
public record Undercatch(CatchEfficiency efficiency, double windHeightM, double rimHeightM) {

  private static final double ADDED_SHARE = (1.23 - 0.54) / Math.sqrt(12) / 0.334;

  /**
   * The adjustment for a station; empty when the sheet doesn't settle it: the wind shield has no
   * published function, there is no wind or no air temperature, or the height of the anemometer or
   * of the orifice isn't given or isn't above the roughness length. No height is guessed.
   */
  public static Optional<Undercatch> of(StationSheet sheet) {
    Optional<CatchEfficiency> efficiency = CatchEfficiency.of(sheet.gauge().windShield());
    double windHeightM =
        sheet
            .channel(Channel.WIND_SPEED)
            .map(Channel::heightM)
            .orElse(OptionalDouble.empty())
            .orElse(0);
    double rimHeightM = sheet.gauge().rimHeightM().orElse(0);
    boolean settled =
        efficiency.isPresent()
            && sheet.channel(Channel.AIR_TEMPERATURE).isPresent()
            && windHeightM > WindProfile.SNOW_ROUGHNESS_M
            && rimHeightM > WindProfile.SNOW_ROUGHNESS_M;
    return settled
        ? Optional.of(new Undercatch(efficiency.get(), windHeightM, rimHeightM))
        : Optional.empty();
  }

  /** Why there is no adjustment although there is wind, in words; empty when there is one. */
  public static Optional<String> obstacle(StationSheet sheet) {
    Optional<Channel> wind = sheet.channel(Channel.WIND_SPEED);
    if (wind.isEmpty() || of(sheet).isPresent()) {
      return Optional.empty();
    }
    String lacking =
        CatchEfficiency.of(sheet.gauge().windShield()).isEmpty()
            ? "a wind_shield with a published function"
            : sheet.channel(Channel.AIR_TEMPERATURE).isEmpty()
                ? "an air_temperature channel"
                : wind.get().heightM().isEmpty()
                    ? "the height_m of the wind channel"
                    : "a rim_height_m above the roughness of snow (0.01 m)";
    return Optional.of("adjusted_mm stays empty: the station sheet lacks " + lacking);
  }

  /**
   * What would have been caught without wind, for one interval of accumulation: half an hour, as
   * the efficiency was fitted to, never a day with its mean wind.
   *
   * @param catchMm what the gauge caught [mm]
   * @param windMs mean wind speed at the anemometer [m/s]
   * @param airTempC mean air temperature [°C]
   * @param snowDepthM depth of snow on the ground [m], 0 where it isn't measured: both heights then
   *     count from the ground. The same depth is taken at gauge and anemometer
   * @return the adjusted catch [mm], not below {@code catchMm} when that is positive; empty when
   *     the catch is NaN, the weather is {@linkplain Weather#possible impossible}, or the snow
   *     leaves the anemometer or the orifice no more than the roughness length above it
   */
  public OptionalDouble adjustedMm(
      double catchMm, double windMs, double airTempC, double snowDepthM) {
    boolean known =
        !Double.isNaN(catchMm)
            && Weather.WIND.possible(windMs)
            && Weather.AIR_TEMPERATURE.possible(airTempC)
            && Weather.SNOW_DEPTH.possible(snowDepthM);
    double snowM = Math.max(0, snowDepthM);
    double lowerM = Math.min(windHeightM, rimHeightM) - snowM;
    if (!known || lowerM <= WindProfile.SNOW_ROUGHNESS_M) {
      return OptionalDouble.empty();
    }
    double atRimMs =
        WindProfile.toHeight(
            windMs, windHeightM - snowM, rimHeightM - snowM, WindProfile.SNOW_ROUGHNESS_M);
    return OptionalDouble.of(catchMm / efficiency.at(atRimMs, airTempC));
  }

  /**
   * Standard uncertainty (k = 1) of an adjusted total: that of the catch, raised as the catch was,
   * and that of what the adjustment adds, of which a site has one error in common all season. At
   * eight other sites the adjusted totals came to 54 to 123 % of the reference (Smith et al. 2020,
   * Hydrol. Earth Syst. Sci. 24, 4025–4043, doi 10.5194/hess-24-4025-2020, abstract). Rectangular
   * over that range (JCGM 100:2008, 4.3.7), that is 0.20 of a total of which a third had been added
   * (the same abstract: unshielded gauges lacked 33.4 %): 0.60 of what is added. To take it as a
   * share of the addition is our own choice: a calm season's total needs none.
   *
   * @param catchMm what the gauge caught [mm], not negative
   * @param catchUncertaintyMm its standard uncertainty [mm]
   * @param adjustedMm the adjusted total of the same intervals [mm]
   * @return standard uncertainty of the adjusted total [mm]
   */
  public static double uncertaintyMm(double catchMm, double catchUncertaintyMm, double adjustedMm) {
    double raised = catchMm > 0 ? adjustedMm / catchMm : 1;
    return Math.hypot(raised * catchUncertaintyMm, ADDED_SHARE * (adjustedMm - catchMm));
  }
}
