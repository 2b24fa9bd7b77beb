package org.rimebook.accumulation;

import org.rimebook.depth.CounterStep;

/**
 * What the steps of coarse counters leave in a dry level that no averaging takes away. Noise as
 * large as a step carries readings over its edges and the mean finds the level between them; with
 * less noise the mean of all readings stays off by some part of the step.
 *
 * <p>Without noise the error of a mean is anything within half a step s: rectangular, of variance
 * s²/12 (JCGM 100:2008, 4.3.7). Over the place of the level within the step it is a saw-tooth, and
 * normal noise of standard deviation σ smooths that: the variance of its first harmonic falls as
 * exp(−4π²σ²/s²), and that of the others faster.
 */
final class CounterBias {

  private static final double SMOOTHED = 4 * StrictMath.PI * StrictMath.PI;

  private CounterBias() {}

  /**
   * Variance of the level's error that stays [mm²].
   *
   * @param evidence what there is
   * @param nodeNoiseMm2 variance of the noise of one value of the level, the steps' own included
   */
  static double mm2(LevelEvidence evidence, double nodeNoiseMm2) {
    int wires = evidence.depths().wires();
    double mm2 = 0;
    for (int wire = 0; wire < wires; wire++) {
      double stepMm =
          CounterStep.of(evidence.record().frequency(wire))
              * CounterStep.mmPerUnit(evidence.record(), evidence.depths(), wire);
      mm2 += ofWire(stepMm, wires * nodeNoiseMm2) / (wires * wires);
    }
    return mm2;
  }

  /**
   * Variance of the error that stays in the mean of one wire's readings [mm²].
   *
   * @param stepMm step of its counter [mm]
   * @param readingMm2 variance of its readings, rounding to steps included [mm²]
   */
  static double ofWire(double stepMm, double readingMm2) {
    double square = stepMm * stepMm;
    if (square == 0) {
      return 0;
    }
    double ownMm2 = Math.max(0, readingMm2 - square / 12);
    return square / 12 * StrictMath.exp(-SMOOTHED * ownMm2 / square);
  }
}
