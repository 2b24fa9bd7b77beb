package org.rimebook.practice.faults;

import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.practice.Chance;
import org.rimebook.practice.DepthEffect;
import org.rimebook.practice.FrequencyEffect;
import org.rimebook.practice.Surroundings;
import org.rimebook.station.Interval;

/** What faulty wires show. */
final class WireEffects {

  private static final double MS_PER_DAY = 86_400_000.0;

  private WireEffects() {}

  /**
   * A wire that gives the same frequency for a while.
   *
   * @param wire index of the wire
   * @param span while it is stuck
   */
  record Stuck(int wire, Interval span) implements FrequencyEffect {

    @Override
    public void apply(Surroundings around, int wire, double[] frequencyHz) {
      double held = Double.NaN;
      for (int i = 0; wire == this.wire && i < frequencyHz.length; i++) {
        if (span.contains(around.sampling().stampMs(i))) {
          held = Double.isNaN(held) ? frequencyHz[i] : held;
          frequencyHz[i] = held;
        }
      }
    }
  }

  /**
   * A wire that creeps away and comes back when it is replaced.
   *
   * @param wire index of the wire
   * @param span from the first creep to the replacement
   * @param mmPerDay rate it comes to [mm/d]
   * @param slowDays how long it takes to come to its rate [d]
   * @param jumpMm what it jumps by half-way [mm]
   */
  record Creep(int wire, Interval span, double mmPerDay, double slowDays, double jumpMm)
      implements DepthEffect {

    @Override
    public void apply(Surroundings around, int wire, double[] depthMm) {
      for (int i = 0; wire == this.wire && i < depthMm.length; i++) {
        long stampMs = around.sampling().stampMs(i);
        if (span.contains(stampMs)) {
          depthMm[i] += atMm((stampMs - span.fromMs()) / MS_PER_DAY);
        }
      }
    }

    /** How far it has crept after so many days [mm]. */
    double atMm(double days) {
      double crept =
          days < slowDays
              ? mmPerDay * days * days / (2 * slowDays)
              : mmPerDay * (days - 0.5 * slowDays);
      return crept + (2 * days * MS_PER_DAY > span.lengthMs() ? jumpMm : 0);
    }
  }

  /**
   * A wire whose zero shifts once and for all.
   *
   * @param wire index of the wire
   * @param atMs when [ms since epoch]
   * @param mm by how much [mm]
   */
  record Shift(int wire, long atMs, double mm) implements DepthEffect {

    @Override
    public void apply(Surroundings around, int wire, double[] depthMm) {
      for (int i = 0; wire == this.wire && i < depthMm.length; i++) {
        depthMm[i] += around.sampling().stampMs(i) >= atMs ? mm : 0;
      }
    }
  }

  /**
   * A wire that is noisier than before, in still air and in wind.
   *
   * @param wire index of the wire
   * @param span while it is
   * @param times how many times as noisy as a usual wire
   */
  record Noisy(int wire, Interval span, double times) implements DepthEffect {

    private static final double CALM_MM = 0.032;
    private static final double GALE_MM = 0.27;

    @Override
    public void apply(Surroundings around, int wire, double[] depthMm) {
      RandomGenerator chance = Chance.of(around.seed(), "noisy wire/" + span.fromMs());
      double more = StrictMath.sqrt(times * times - 1);
      for (int i = 0; wire == this.wire && i < depthMm.length; i++) {
        if (span.contains(around.sampling().stampMs(i))) {
          double gales = Math.min(1.5, around.weather().windMs(i) / 10);
          double usualMm = CALM_MM + GALE_MM * StrictMath.pow(gales, 1.6);
          depthMm[i] += more * usualMm * chance.nextGaussian();
        }
      }
    }
  }

  /**
   * A wire that gives a frequency it can't have.
   *
   * @param wire index of the wire
   * @param span while it does
   * @param hz about which frequency [Hz]
   */
  record OutOfRange(int wire, Interval span, double hz) implements FrequencyEffect {

    @Override
    public void apply(Surroundings around, int wire, double[] frequencyHz) {
      RandomGenerator chance = Chance.of(around.seed(), "out of range/" + span.fromMs());
      for (int i = 0; wire == this.wire && i < frequencyHz.length; i++) {
        if (span.contains(around.sampling().stampMs(i))) {
          frequencyHz[i] = hz + 10 * chance.nextDouble();
        }
      }
    }
  }

  /**
   * A wire struck by interference again and again.
   *
   * @param wire index of the wire
   * @param span while it is
   * @param share share of its readings that are struck
   * @param sizeHz standard deviation of what strikes [Hz]
   */
  record Struck(int wire, Interval span, double share, double sizeHz) implements FrequencyEffect {

    @Override
    public void apply(Surroundings around, int wire, double[] frequencyHz) {
      RandomGenerator chance =
          Chance.of(around.seed(), "struck/" + this.wire + "/" + span.fromMs());
      for (int i = 0; wire == this.wire && i < frequencyHz.length; i++) {
        if (span.contains(around.sampling().stampMs(i)) && chance.nextDouble() < share) {
          frequencyHz[i] = Math.max(0, frequencyHz[i] + sizeHz * chance.nextGaussian());
        }
      }
    }
  }
}
