package org.rimebook.depth;

/**
 * How a wire stood to the others on one side of a hole, from the few readings next to it.
 *
 * @param offsetMm median of its depth less what the others let expect [mm]
 * @param stampMs mean time of the readings [ms since epoch]
 * @param expectedMm mean of what they let expect [mm]
 * @param sdMm robust standard deviation of single offsets [mm]
 * @param readings readings taken
 */
record Anchor(double offsetMm, double stampMs, double expectedMm, double sdMm, int readings) {

  /** Standard error of the offset [mm] when single offsets scatter by {@code sdMm}. */
  double standardErrorMm(double scatterMm) {
    return scatterMm / Math.sqrt(readings);
  }
}
