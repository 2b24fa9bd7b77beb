package org.rimebook.upkeep;

import java.util.Arrays;
import org.rimebook.depth.Robust;

/**
 * How a wire answers a tap on the rim: it jumps, and comes back to where it was. Common practice;
 * limits are own choice.
 *
 * @param jumpMm the farthest reading during the taps from the level before [mm]
 * @param scatterMm scatter of a reading at rest [mm]
 * @param movedMm level after the taps less that before [mm]
 */
public record TapTest(double jumpMm, double scatterMm, double movedMm) {

  /** A jump is this many times the scatter at rest. */
  private static final double JUMPS = 5;

  /** Where a wire comes back to within [mm]. */
  private static final double BACK_MM = 0.2;

  private static final double BACK_SDS = 4;

  /**
   * Looks at the depths of a wire.
   *
   * @param beforeMm readings at rest before the taps, two or more [mm]
   * @param duringMm readings during the taps [mm]
   * @param afterMm readings after them [mm]
   * @throws IllegalArgumentException in words with too few readings
   */
  static TapTest of(double[] beforeMm, double[] duringMm, double[] afterMm) {
    int least = AtRest.LEAST_READINGS / 2;
    if (beforeMm.length < AtRest.LEAST_READINGS || duringMm.length == 0 || afterMm.length < least) {
      throw new IllegalArgumentException(
          "for taps "
              + AtRest.LEAST_READINGS
              + " readings before them, 1 during them and "
              + least
              + " after them are needed; "
              + beforeMm.length
              + ", "
              + duringMm.length
              + " and "
              + afterMm.length
              + " are there. Have the logger read every few seconds meanwhile");
    }
    double level = Robust.medianInPlace(beforeMm.clone(), beforeMm.length);
    double jump =
        Arrays.stream(duringMm)
            .map(mm -> mm - level)
            .reduce(0, (one, other) -> Math.abs(other) > Math.abs(one) ? other : one);
    double after = Robust.medianInPlace(afterMm.clone(), afterMm.length);
    return new TapTest(jump, AtRest.noiseMm(beforeMm), after - level);
  }

  /** Whether it answered. */
  public boolean answers() {
    return Math.abs(jumpMm) > JUMPS * scatterMm;
  }

  /** Whether it came back. */
  public boolean comesBack() {
    return Math.abs(movedMm) <= Math.max(BACK_MM, BACK_SDS * scatterMm);
  }
}
