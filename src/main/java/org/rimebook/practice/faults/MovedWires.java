package org.rimebook.practice.faults;

import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.practice.Chance;
import org.rimebook.practice.DepthEffect;
import org.rimebook.practice.Surroundings;
import org.rimebook.practice.Weather;
import org.rimebook.station.Interval;

/** What wires show that wind shakes or the sun warms more than is usual. */
final class MovedWires {

  private static final double MS_PER_DAY = 86_400_000.0;
  private static final double CLOUD_SHARE = 0.8;

  private MovedWires() {}

  /**
   * A bucket that the wind shakes.
   *
   * @param span while it does
   * @param mm standard deviation of a reading [mm]
   * @param commonShare share of the variance common to all wires, 0 to 1
   */
  record Shaken(Interval span, double mm, double commonShare) implements DepthEffect {

    @Override
    public void apply(Surroundings around, int wire, double[] depthMm) {
      RandomGenerator common = Chance.of(around.seed(), "shaken/" + span.fromMs());
      RandomGenerator own = Chance.of(around.seed(), "shaken/" + span.fromMs() + "/" + wire);
      double ofAll = mm * StrictMath.sqrt(commonShare);
      double ofOne = mm * StrictMath.sqrt(1 - commonShare);
      for (int i = 0; i < depthMm.length; i++) {
        if (span.contains(around.sampling().stampMs(i))) {
          depthMm[i] += ofAll * common.nextGaussian() + ofOne * own.nextGaussian();
        }
      }
    }
  }

  /**
   * A wire that moves once a day, more under a clear sky than under cloud.
   *
   * @param wire index of the wire
   * @param clearMm amplitude under a clear sky [mm]
   * @param riseHour hour of the station's day at which it passes its mean, upwards
   */
  record InSun(int wire, double clearMm, double riseHour) implements DepthEffect {

    @Override
    public void apply(Surroundings around, int wire, double[] depthMm) {
      double offsetMs = around.sheet().utcOffset().getTotalSeconds() * 1000.0;
      for (int i = 0; wire == this.wire && i < depthMm.length; i++) {
        double day = (around.sampling().stampMs(i) + offsetMs) / MS_PER_DAY - riseHour / 24;
        double turn = 2 * StrictMath.PI * (day - StrictMath.rint(day));
        depthMm[i] += clearMm * clear(around.weather(), i) * StrictMath.sin(turn);
      }
    }
  }

  /** How clear the sky is, 0.2 to 1. */
  static double clear(Weather weather, int index) {
    return 1 - CLOUD_SHARE * weather.unsettled(index);
  }
}
