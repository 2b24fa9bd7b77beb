package org.rimebook.depth;

import java.util.function.IntToDoubleFunction;

/**
 * Finds isolated spikes: one reading, or two in a row, that stand off from the readings on both
 * sides in the same direction by more than the local noise explains, and after which the level goes
 * on as before.
 *
 * <p>A reading is measured against its two neighbours and the medians of up to five readings on
 * each side, and counts as a spike only when it lies beyond all four. So a series that never falls
 * (rain at any rate, a step that stays) never holds a spike, and neither does the first or last
 * reading of a run. The limit is k robust standard deviations of the local noise in the manner of
 * Hampel's identifier (Hampel 1974; Davies and Gather 1993), with three departures: the noise comes
 * from first differences, so that rain doesn't count as noise; it is the larger of the noise before
 * and after, so that the onset of wind isn't a row of spikes; and it has a floor, since quantised
 * calm readings have none.
 */
final class SpikeScreen {

  /** Standard deviations of local noise a spike stands off; own choice, see the property tests. */
  static final double LIMIT_SD = 6;

  private static final int SIDE = 5;
  private static final int LONGEST = 2;
  private static final int NOISE_DIFFERENCES = 15;
  private static final int LEAST_DIFFERENCES = 5;
  private static final int USUAL_SAMPLE = 10_000;

  private final double[] depthMm;
  private final IntToDoubleFunction floorMm;
  private final double usualNoiseMm;
  private final double[] buffer = new double[NOISE_DIFFERENCES];
  private int from;
  private int to;

  /**
   * @param depthMm readings in time order [mm], finite; not copied and not changed
   * @param floorMm least stand-off of a spike at each reading [mm]
   */
  SpikeScreen(double[] depthMm, IntToDoubleFunction floorMm) {
    this.depthMm = depthMm;
    this.floorMm = floorMm;
    this.usualNoiseMm = usualNoiseMm(depthMm);
  }

  /**
   * Marks the spikes among the readings of one run, within which readings compare.
   *
   * @param fromIndex first reading of the run
   * @param toIndex first reading after it
   * @param spike set at each spike
   */
  void mark(int fromIndex, int toIndex, boolean[] spike) {
    from = fromIndex;
    to = toIndex;
    int i = fromIndex + 1;
    while (i < toIndex - 1) {
      int length = spikeLength(i);
      for (int j = i; j < i + length; j++) {
        spike[j] = true;
      }
      i += Math.max(1, length);
    }
  }

  /** Readings in the spike that starts here; 0 when none does. */
  private int spikeLength(int first) {
    double sign = Math.signum(depthMm[first] - depthMm[first - 1]);
    for (int length = 1; length <= LONGEST && first + length < to; length++) {
      if (isSpike(first, first + length, sign)) {
        return length;
      }
    }
    return 0;
  }

  private boolean isSpike(int first, int end, double sign) {
    double least = sign * depthMm[first];
    for (int i = first + 1; i < end; i++) {
      least = Math.min(least, sign * depthMm[i]);
    }
    double neighbour = Math.max(sign * depthMm[first - 1], sign * depthMm[end]);
    if (least <= neighbour) {
      return false;
    }
    double floor = floorMm.applyAsDouble(first);
    if (least - neighbour <= floor) {
      return false;
    }
    double before = sign * sideMedian(Math.max(from, first - SIDE), first);
    double after = sign * sideMedian(end, Math.min(to, end + SIDE));
    double standOff = least - Math.max(neighbour, Math.max(before, after));
    return standOff > floor && standOff > LIMIT_SD * noiseMm(first, end);
  }

  private double sideMedian(int start, int end) {
    System.arraycopy(depthMm, start, buffer, 0, end - start);
    return Robust.medianInPlace(buffer, end - start);
  }

  /** Noise of single readings [mm] around a stretch, without the stretch itself. */
  private double noiseMm(int first, int end) {
    int beforeFrom = Math.max(from, first - 1 - NOISE_DIFFERENCES);
    int afterTo = Math.min(to, end + 1 + NOISE_DIFFERENCES);
    double noise = Math.max(noiseWithinMm(beforeFrom, first), noiseWithinMm(end, afterTo));
    return noise >= 0 ? noise : usualNoiseMm;
  }

  /** Noise from first differences among the readings; −1 when they are too few to tell. */
  private double noiseWithinMm(int start, int end) {
    int differences = end - start - 1;
    if (differences < LEAST_DIFFERENCES) {
      return -1;
    }
    for (int i = 0; i < differences; i++) {
      buffer[i] = depthMm[start + i + 1] - depthMm[start + i];
    }
    return Robust.sdInPlace(buffer, differences) / Math.sqrt(2);
  }

  /** Noise over the whole season from evenly spread differences, for runs too short to tell. */
  private static double usualNoiseMm(double[] depthMm) {
    int size = depthMm.length;
    int stride = Math.max(1, size / USUAL_SAMPLE);
    int count = size < 2 ? 0 : (size - 2) / stride + 1;
    double[] differences = new double[count];
    for (int i = 0; i < count; i++) {
      differences[i] = depthMm[i * stride + 1] - depthMm[i * stride];
    }
    return count == 0 ? 0 : Robust.sdInPlace(differences, count) / Math.sqrt(2);
  }
}
