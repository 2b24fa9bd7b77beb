package org.rimebook.practice;

import org.apache.commons.math3.random.RandomGenerator;

/**
 * Wires that read less when warm: about −0.004 % of the reading per °C in chamber tests of 256
 * wires (Lamb, Persaud and Mouradian, AMS 89th annual meeting, 2009), a little different for each.
 *
 * @param perDegC mean change as a share of the reading per °C, for example −4e-5
 * @param spread standard deviation of that between wires
 * @param referenceDegC temperature of the calibration [°C]
 * @param lagMs time constant with which a wire follows the air [ms]; 0 when it does at once
 */
public record TemperatureCoefficient(
    double perDegC, double spread, double referenceDegC, double lagMs) implements DepthEffect {

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    RandomGenerator chance = Chance.of(around.seed(), "temperature coefficient/" + wire);
    double own = perDegC + spread * chance.nextGaussian();
    double kept = lagMs == 0 ? 0 : StrictMath.exp(-around.sampling().stepMs() / lagMs);
    double wireDegC = around.weather().airTemperatureDegC(0);
    for (int i = 0; i < depthMm.length; i++) {
      wireDegC = kept * wireDegC + (1 - kept) * around.weather().airTemperatureDegC(i);
      depthMm[i] *= 1 + own * (wireDegC - referenceDegC);
    }
  }
}
