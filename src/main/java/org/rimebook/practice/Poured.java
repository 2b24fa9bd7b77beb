package org.rimebook.practice;

/**
 * Something poured into the bucket where it hangs.
 *
 * @param fromMs when pouring starts [ms since epoch]
 * @param tookMs how long it takes [ms]
 * @param mm how much [mm of water over the orifice]
 */
public record Poured(long fromMs, long tookMs, double mm) implements DepthEffect {

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    for (int i = 0; i < depthMm.length; i++) {
      double share = (around.sampling().stampMs(i) - fromMs) / (double) tookMs;
      depthMm[i] += mm * Math.max(0, Math.min(1, share));
    }
  }
}
