package org.rimebook.practice;

import org.rimebook.station.StationSheet;

/** What an effect may look at: the gauge, the weather, the sun. For one thread at a time. */
public final class Surroundings {

  private static final double CLOUD_SHADE = 0.85;
  private static final double FULL_CIRCLE_DEG = 360;

  private final StationSheet sheet;
  private final Weather weather;
  private final long seed;
  private final Sun[] suns;

  /**
   * @param sheet the station sheet
   * @param weather weather at the readings
   * @param seed seed of the season
   */
  public Surroundings(StationSheet sheet, Weather weather, long seed) {
    this.sheet = sheet;
    this.weather = weather;
    this.seed = seed;
    this.suns = new Sun[weather.sampling().size()];
  }

  /** The station sheet. */
  public StationSheet sheet() {
    return sheet;
  }

  /** Weather at the readings. */
  public Weather weather() {
    return weather;
  }

  /** Seed of the season. */
  public long seed() {
    return seed;
  }

  /** The readings. */
  public Sampling sampling() {
    return weather.sampling();
  }

  /** Kept once asked for: several effects ask for each, and it is most of their work. */
  Sun sun(int index) {
    if (suns[index] == null) {
      double latitudeDeg = sheet.latitudeDeg().orElse(45);
      suns[index] = Sun.at(sampling().stampMs(index), latitudeDeg, sheet.utcOffset());
    }
    return suns[index];
  }

  /** Sunlight on level ground, 0 at night to 1 under a clear zenith sun. */
  public double sunlight(int index) {
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
