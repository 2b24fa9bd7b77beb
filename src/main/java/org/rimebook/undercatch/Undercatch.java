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

  /** No hour's mean wind near the ground is stronger; our own choice, above any record gust. */
  private static final double STRONGEST_MEAN_WIND_MS = 120;

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
   * What would have been caught without wind. For one interval of accumulation (an hour), never for
   * a day with its mean wind.
   *
   * @param catchMm what the gauge caught [mm]
   * @param windMs mean wind speed at the anemometer [m/s]
   * @param airTempC mean air temperature [°C]
   * @return the adjusted catch [mm], not below {@code catchMm} when that is positive; empty when an
   *     input is NaN, or the wind is negative or stronger than any hour's mean can be
   */
  public OptionalDouble adjustedMm(double catchMm, double windMs, double airTempC) {
    boolean wind = windMs >= 0 && windMs <= STRONGEST_MEAN_WIND_MS;
    if (Double.isNaN(catchMm) || Double.isNaN(airTempC) || !wind) {
      return OptionalDouble.empty();
    }
    double atRimMs =
        WindProfile.toHeight(windMs, windHeightM, rimHeightM, WindProfile.SNOW_ROUGHNESS_M);
    return OptionalDouble.of(catchMm / efficiency.at(atRimMs, airTempC));
  }
}
