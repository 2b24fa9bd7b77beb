package org.rimebook.practice;

/**
 * A counter that resolves frequency in steps.
 *
 * @param stepHz step [Hz]
 */
public record Quantisation(double stepHz) implements FrequencyEffect {

  @Override
  public void apply(Surroundings around, int wire, double[] frequencyHz) {
    for (int i = 0; i < frequencyHz.length; i++) {
      frequencyHz[i] = StrictMath.rint(frequencyHz[i] / stepHz) * stepHz;
    }
  }
}
