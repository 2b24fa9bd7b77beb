package org.rimebook.practice;

import org.rimebook.station.StationSheet;

/**
 * What an effect may look at.
 *
 * @param sheet the station sheet
 * @param weather weather at the readings
 * @param seed seed of the season
 */
public record Surroundings(StationSheet sheet, Weather weather, long seed) {

  private static final double CLOUD_SHADE = 0.85;
  private static final double FULL_CIRCLE_DEG = 360;

  /** The readings. */
  public Sampling sampling() {
    return weather.sampling();
  }

  Sun sun(int index) {
    double latitudeDeg = sheet.latitudeDeg().orElse(45);
    return Sun.at(sampling().stampMs(index), latitudeDeg, sheet.utcOffset());
  }

  /** Sunlight on level ground, 0 at night to 1 under a clear zenith sun. */
  double sunlight(int index) {
    return sunlight(sun(index), index);
  }

  double sunlight(Sun sun, int index) {
    return Math.max(0, sun.elevationSine()) * (1 - CLOUD_SHADE * weather.unsettled(index));
  }

  /** Wires hang evenly round the bucket, the first one on the north side. */
  double azimuthDeg(int wire) {
    return FULL_CIRCLE_DEG * wire / sheet.wires().size();
  }
}
