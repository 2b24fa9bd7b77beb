package org.rimebook.practice;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * Simulated weather at the readings of a season: air temperature (season, day, air masses), wind
 * with gusts, and how unsettled the sky is. One index drives cloud, wind and the chance of a storm,
 * so that sun and snow don't share an hour more often than they would.
 */
public final class Weather {

  private static final double COLDEST_DAY_OF_YEAR = 15;
  private static final double WARMEST_HOUR = 15;
  private static final double GUST_MEMORY_MS = 180_000;

  private final Sampling sampling;
  private final double[] airTemperatureDegC;
  private final double[] windMs;
  private final double[] unsettled;

  private Weather(Sampling sampling) {
    this.sampling = sampling;
    this.airTemperatureDegC = new double[sampling.size()];
    this.windMs = new double[sampling.size()];
    this.unsettled = new double[sampling.size()];
  }

  /** Weather drawn from a seed. */
  public static Weather simulated(
      Sampling sampling, ZoneOffset offset, Climate climate, long seed) {
    Weather weather = new Weather(sampling);
    weather.fillSky(seed);
    weather.fillTemperature(offset, climate, seed);
    weather.fillWind(climate, seed);
    return weather;
  }

  private void fillSky(long seed) {
    Wander pressure = new Wander(sampling.span(), 36, Chance.of(seed, "weather/sky"));
    for (int i = 0; i < unsettled.length; i++) {
      unsettled[i] = 1 / (1 + StrictMath.exp(-1.5 * pressure.at(sampling.stampMs(i))));
    }
  }

  private void fillTemperature(ZoneOffset offset, Climate climate, long seed) {
    Wander airMass = new Wander(sampling.span(), 60, Chance.of(seed, "weather/air mass"));
    for (int i = 0; i < airTemperatureDegC.length; i++) {
      OffsetDateTime time = Instant.ofEpochMilli(sampling.stampMs(i)).atOffset(offset);
      double season = 2 * StrictMath.PI * (time.getDayOfYear() - COLDEST_DAY_OF_YEAR) / 365.25;
      double hour = time.toLocalTime().toSecondOfDay() / 3600.0;
      double day = 2 * StrictMath.PI * (hour - WARMEST_HOUR) / 24;
      airTemperatureDegC[i] =
          climate.meanDegC()
              - climate.seasonalSwingDegC() * StrictMath.cos(season)
              + climate.diurnalSwingDegC() * (1 - 0.8 * unsettled[i]) * StrictMath.cos(day)
              + climate.synopticSdDegC() * airMass.at(sampling.stampMs(i));
    }
  }

  private void fillWind(Climate climate, long seed) {
    Wander slow = new Wander(sampling.span(), 10, Chance.of(seed, "weather/wind"));
    RandomGenerator chance = Chance.of(seed, "weather/gusts");
    double kept = StrictMath.exp(-sampling.stepMs() / GUST_MEMORY_MS);
    double fresh = StrictMath.sqrt(1 - kept * kept);
    double gust = 0;
    for (int i = 0; i < windMs.length; i++) {
      gust = kept * gust + fresh * chance.nextGaussian();
      double hourly = StrictMath.exp(0.45 * slow.at(sampling.stampMs(i)) - 0.1);
      double lull = 0.6 + 0.8 * unsettled[i];
      windMs[i] = Math.max(0, climate.windMeanMs() * hourly * lull * (1 + 0.18 * gust));
    }
  }

  /** The readings the weather is known at. */
  public Sampling sampling() {
    return sampling;
  }

  /** Air temperature [°C]. */
  public double airTemperatureDegC(int index) {
    return airTemperatureDegC[index];
  }

  /** Wind speed at sensor height [m/s]. */
  public double windMs(int index) {
    return windMs[index];
  }

  /** How unsettled the sky is, 0 (clear, calm) to 1 (overcast, stormy). */
  public double unsettled(int index) {
    return unsettled[index];
  }
}
