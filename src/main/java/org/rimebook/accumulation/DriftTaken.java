package org.rimebook.accumulation;

/**
 * What was taken off a change of level as drift, by what goes with it. A positive part is a rise
 * that isn't catch.
 *
 * @param temperatureMm the air temperature, which moves the reading in proportion to the load [mm]
 * @param departuresMm the wires' departures from their mean [mm]
 * @param waveMm the daily wave, of which the mean is evaporation [mm]
 */
public record DriftTaken(double temperatureMm, double departuresMm, double waveMm) {

  /** All of it [mm]. */
  public double totalMm() {
    return temperatureMm + departuresMm + waveMm;
  }
}
