package org.rimebook.practice;

/**
 * A bucket that hangs askew: wires on the low side carry more. Over wires spaced evenly the excess
 * cancels.
 *
 * @param share excess on the lowest side as a share of the depth
 * @param lowSideDeg direction of the low side [degrees from north]
 */
public record Tilt(double share, double lowSideDeg) implements DepthEffect {

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    double turn = StrictMath.toRadians(around.azimuthDeg(wire) - lowSideDeg);
    double factor = 1 + share * StrictMath.cos(turn);
    for (int i = 0; i < depthMm.length; i++) {
      depthMm[i] *= factor;
    }
  }
}
