package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;

/**
 * Noise of single readings whose size, spectrum and tails can be chosen, partly common to all wires
 * because the wind pumps the whole bucket.
 *
 * @param size how large it is
 * @param commonShare share of the variance common to all wires, 0 to 1
 * @param memory what of it remembers
 * @param tails how its single readings are distributed
 */
public record ReadingNoise(Size size, double commonShare, Memory memory, Tails tails)
    implements DepthEffect {

  private static final double GALE_MS = 10;
  private static final double MOST_GALES = 1.5;

  /**
   * Standard deviation by wind, growing up to 15 m/s.
   *
   * @param calmMm in still air [mm]
   * @param galeMm added at 10 m/s [mm]
   * @param power power of the wind it grows with
   */
  public record Size(double calmMm, double galeMm, double power) {

    /** The same many times as large. */
    public Size times(double factor) {
      return new Size(factor * calmMm, factor * galeMm, power);
    }

    /** Standard deviation of a reading in a wind [m/s], in mm. */
    public double atMm(double windMs) {
      double gales = Math.min(MOST_GALES, windMs / GALE_MS);
      return calmMm + galeMm * StrictMath.pow(gales, power);
    }
  }

  /**
   * The part that is a first-order autoregression; the rest is white.
   *
   * @param share its share of the variance, 0 to 1
   * @param timeConstantMs how long it remembers [ms]
   */
  public record Memory(double share, double timeConstantMs) {}

  /** Distribution of the white part, with variance 1. */
  public enum Tails {
    NORMAL {
      @Override
      double next(RandomGenerator chance) {
        return chance.nextGaussian();
      }
    },
    /** Student's t with three degrees of freedom. */
    HEAVY {
      @Override
      double next(RandomGenerator chance) {
        double normal = chance.nextGaussian();
        double squares = 0;
        for (int i = 0; i < DEGREES_OF_FREEDOM; i++) {
          double component = chance.nextGaussian();
          squares += component * component;
        }
        // A t of 3 degrees of freedom has variance 3: what it is divided by again cancels.
        return normal / StrictMath.sqrt(squares);
      }
    };

    private static final int DEGREES_OF_FREEDOM = 3;

    abstract double next(RandomGenerator chance);
  }

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    add(around, "reading noise/common", StrictMath.sqrt(commonShare), depthMm);
    add(around, "reading noise/" + wire, StrictMath.sqrt(1 - commonShare), depthMm);
  }

  private void add(Surroundings around, String stream, double factor, double[] depthMm) {
    RandomGenerator chance = Chance.of(around.seed(), stream);
    double kept = StrictMath.exp(-around.sampling().stepMs() / memory.timeConstantMs());
    double fresh = StrictMath.sqrt(1 - kept * kept);
    double white = factor * StrictMath.sqrt(1 - memory.share());
    double coloured = factor * StrictMath.sqrt(memory.share());
    double slow = tails.next(chance);
    for (int i = 0; i < depthMm.length; i++) {
      slow = kept * slow + fresh * tails.next(chance);
      double unit = white * tails.next(chance) + coloured * slow;
      depthMm[i] += size.atMm(around.weather().windMs(i)) * unit;
    }
  }
}
