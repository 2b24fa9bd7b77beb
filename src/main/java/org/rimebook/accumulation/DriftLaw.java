package org.rimebook.accumulation;

import java.util.List;
import java.util.Optional;

/**
 * How the level moves while nothing falls, as learnt from the dry time of a season. Every term that
 * was learnt was taken off the level; with too little dry time none is learnt and the lists are
 * empty. Uncertainties are those of the fit: sun-driven movement that goes with the temperature day
 * by day, and not with the wires' departures, is taken for its effect and isn't in them.
 *
 * @param dryHours dry three-hour changes of the level behind it, one starting each hour
 * @param temperaturePerDegC share of the load by which the reading moves a degree [1/°C]; empty
 *     without air temperature
 * @param departures what the level does as wires depart from their mean
 * @param waveMmPerH rate of the daily wave [mm/h]: mean, then cosine and sine of one and of two
 *     waves a day of UTC
 */
public record DriftLaw(
    int dryHours,
    Optional<Fitted> temperaturePerDegC,
    List<Departure> departures,
    List<Fitted> waveMmPerH) {

  private static final double HOURS_A_DAY = 24;

  public DriftLaw {
    departures = List.copyOf(departures);
    waveMmPerH = List.copyOf(waveMmPerH);
  }

  /**
   * What the level does as a wire departs from the mean of all.
   *
   * @param wire name of the wire
   * @param mmPerMm change of level for a change of the departure [mm/mm]
   */
  public record Departure(String wire, Fitted mmPerMm) {}

  /** Mean fall of a dry level, which is evaporation [mm/d]; empty when nothing was learnt. */
  public Optional<Fitted> evaporationMmPerD() {
    return waveMmPerH.stream().findFirst().map(mean -> mean.times(-HOURS_A_DAY));
  }
}
