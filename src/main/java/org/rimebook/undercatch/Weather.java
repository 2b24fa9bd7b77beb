package org.rimebook.undercatch;

import org.rimebook.station.Channel;

/**
 * The weather that an adjustment and the phase need, each quantity with the values it can have. The
 * limits are our own choice, just outside what has been measured anywhere; a value beyond them is
 * the sensor's or the logger's, not the weather's.
 */
public enum Weather {
  /** Wind speed [m/s]. */
  WIND(Channel.WIND_SPEED, 0, 120),
  /** Air temperature [°C]. */
  AIR_TEMPERATURE(Channel.AIR_TEMPERATURE, -90, 60),
  /** Depth of snow on the ground [m]; a sensor over bare ground reads a little below zero. */
  SNOW_DEPTH(Channel.SNOW_DEPTH, -0.1, 20),
  /** Relative humidity over water [%]; a sensor in saturated air reads a little more than 100. */
  HUMIDITY(Channel.RELATIVE_HUMIDITY, 0, 110);

  private final String quantity;
  private final double least;
  private final double greatest;

  Weather(String quantity, double least, double greatest) {
    this.quantity = quantity;
    this.least = least;
    this.greatest = greatest;
  }

  /** The quantity of its channel in the station sheet. */
  public String quantity() {
    return quantity;
  }

  /** Whether the quantity can have this value; never for NaN. */
  public boolean possible(double value) {
    return value >= least && value <= greatest;
  }
}
