package org.rimebook.findings;

/**
 * What temperature usually does to a wire: −0.004 % of the reading per °C (Lamb, Persaud and
 * Mouradian, AMS 89th annual meeting, 2009), unless its sheet states what to take off instead.
 */
final class UsualTemperature {

  private static final double PER_DEG_C = -4e-5;

  private UsualTemperature() {}

  /** Share of the depth that goes with a degree and is still in it [1/°C]. */
  static double perDegC(Scene scene, int wire) {
    return scene.sheet().wires().get(wire).temperaturePerDegC().isPresent() ? 0 : PER_DEG_C;
  }
}
