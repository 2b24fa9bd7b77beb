package org.rimebook.practice;

/** Something that makes a wire show another depth than the bucket's. */
@FunctionalInterface
public interface DepthEffect {

  /**
   * Changes what one wire shows.
   *
   * @param around the season
   * @param wire index of the wire
   * @param depthMm depth the wire shows at each reading [mm], changed in place
   */
  void apply(Surroundings around, int wire, double[] depthMm);
}
