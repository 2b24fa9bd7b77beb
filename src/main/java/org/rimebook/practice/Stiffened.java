package org.rimebook.practice;

import org.rimebook.station.Interval;

/**
 * A frozen bucket: what lies on the ice still weighs, but nothing sloshes, so that wires feel
 * little of the wind.
 *
 * @param frozen while it is frozen
 * @param left share of the quick changes that is left
 */
public record Stiffened(Interval frozen, double left) implements DepthEffect {

  private static final double MEMORY_MS = 1_200_000;

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    double kept = StrictMath.exp(-around.sampling().stepMs() / MEMORY_MS);
    double smooth = depthMm[0];
    for (int i = 0; i < depthMm.length; i++) {
      smooth = kept * smooth + (1 - kept) * depthMm[i];
      if (frozen.contains(around.sampling().stampMs(i))) {
        depthMm[i] = smooth + left * (depthMm[i] - smooth);
      }
    }
  }
}
