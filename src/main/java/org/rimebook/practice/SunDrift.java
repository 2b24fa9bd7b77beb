package org.rimebook.practice;

/**
 * Wires that move when the sun warms their side of the gauge, with a lag; the northern one sees
 * diffuse light only and moves least.
 *
 * @param sizeMm movement in full sun [mm]
 * @param lagMs time constant of warming [ms]
 */
public record SunDrift(double sizeMm, double lagMs) implements DepthEffect {

  private static final double DIFFUSE = 0.15;

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    double kept = StrictMath.exp(-around.sampling().stepMs() / lagMs);
    double warmth = 0;
    for (int i = 0; i < depthMm.length; i++) {
      Sun sun = around.sun(i);
      double turn = StrictMath.toRadians(around.azimuthDeg(wire) - sun.azimuthDeg());
      double facing = DIFFUSE + (1 - DIFFUSE) * Math.max(0, StrictMath.cos(turn));
      warmth = kept * warmth + (1 - kept) * around.sunlight(sun, i) * facing;
      depthMm[i] += sizeMm * warmth;
    }
  }
}
