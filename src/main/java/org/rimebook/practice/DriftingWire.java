package org.rimebook.practice;

import org.rimebook.station.Interval;

/**
 * One wire that creeps away at a constant rate and comes back only when it is replaced.
 *
 * @param wire index of the wire
 * @param span from the first creep to the replacement
 * @param mmPerDay rate [mm/d], of either sign
 */
public record DriftingWire(int wire, Interval span, double mmPerDay) implements DepthEffect {

  private static final double MS_PER_DAY = 86_400_000.0;

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    if (wire != this.wire) {
      return;
    }
    for (int i = 0; i < depthMm.length; i++) {
      long stampMs = around.sampling().stampMs(i);
      if (span.contains(stampMs)) {
        depthMm[i] += mmPerDay * (stampMs - span.fromMs()) / MS_PER_DAY;
      }
    }
  }
}
