package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;

/**
 * Noise of single readings that grows with the square of the wind up to 20 m/s: partly white,
 * partly with a memory of minutes, and partly common to all wires because the wind pumps the whole
 * bucket.
 *
 * @param calmMm standard deviation in still air [mm]
 * @param galeMm standard deviation added at 10 m/s [mm]
 * @param commonShare share of the variance common to all wires, 0 to 1
 * @param memoryMs time constant of the part with a memory [ms]
 */
public record WindNoise(double calmMm, double galeMm, double commonShare, double memoryMs)
    implements DepthEffect {

  private static final double GALE_MS = 10;
  private static final double MOST_GALES = 2;
  private static final double SHARE_WITH_MEMORY = 0.4;

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    add(around, "wind noise/common", StrictMath.sqrt(commonShare), depthMm);
    add(around, "wind noise/" + wire, StrictMath.sqrt(1 - commonShare), depthMm);
  }

  private void add(Surroundings around, String stream, double factor, double[] depthMm) {
    RandomGenerator chance = Chance.of(around.seed(), stream);
    double kept = StrictMath.exp(-around.sampling().stepMs() / memoryMs);
    double fresh = StrictMath.sqrt(1 - kept * kept);
    double white = StrictMath.sqrt(1 - SHARE_WITH_MEMORY);
    double coloured = StrictMath.sqrt(SHARE_WITH_MEMORY);
    double slow = chance.nextGaussian();
    for (int i = 0; i < depthMm.length; i++) {
      double gale = Math.min(MOST_GALES, around.weather().windMs(i) / GALE_MS);
      slow = kept * slow + fresh * chance.nextGaussian();
      double unit = white * chance.nextGaussian() + coloured * slow;
      depthMm[i] += factor * (calmMm + galeMm * gale * gale) * unit;
    }
  }
}
