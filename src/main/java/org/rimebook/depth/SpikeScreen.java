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
 * from second differences, so that steady rain doesn't count as noise; it is the larger of the
 * noise before and after, so that the onset of wind isn't a row of spikes; and it has a floor,
 * since quantised calm readings have none.
 */
final class SpikeScreen {

  /** Standard deviations of local noise a spike stands off; own choice. */
  static final double LIMIT_SD = 6;

  /**
   * Readings beyond which one reading doesn't bear on whether another is a spike: what noise is
   * taken from, and room for a spike or two in between.
   */
  static final int REACH = 40;

  // Own choice all: long enough for a median, short against weather.
  private static final int SIDE = 5;
  private static final int LONGEST = 2;
  private static final int NOISE_READINGS = 17;
  private static final int LEAST_READINGS = 7;
  private static final int USUAL_SAMPLE = 10_000;

  /** Second differences of independent noise have √6 times its standard deviation. */
  private static final double MEDIAN_BEND_PER_NOISE = Math.sqrt(6) / Robust.SD_PER_MAD;

  private final double[] depthMm;
  private final IntToDoubleFunction floorMm;
  private final double usualNoiseMm;
  private final double[] side = new double[SIDE];
  private int from;
  private int to;

  /**
   * @param depthMm readings in time order [mm], finite; not copied and not changed
   * @param floorMm least stand-off of a spike at each reading [mm]
   * @param usualNoiseMm noise of runs too short to tell [mm]
   */
  SpikeScreen(double[] depthMm, IntToDoubleFunction floorMm, double usualNoiseMm) {
    this.depthMm = depthMm;
    this.floorMm = floorMm;
    this.usualNoiseMm = usualNoiseMm;
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
    // The neighbours bound the stand-off from above, and are cheap to ask first.
    if (!beyondNoise(least - neighbour, first, end)) {
      return false;
    }
    double before = sign * sideMedian(Math.max(from, first - SIDE), first);
    double after = sign * sideMedian(end, Math.min(to, end + SIDE));
    double standOff = least - Math.max(neighbour, Math.max(before, after));
    return standOff > floor && beyondNoise(standOff, first, end);
  }

  private double sideMedian(int start, int end) {
    System.arraycopy(depthMm, start, side, 0, end - start);
    return Robust.medianInPlace(side, end - start);
  }

  /** Whether a stand-off exceeds the limit on both sides of a stretch, as far as they can tell. */
  private boolean beyondNoise(double standOffMm, int first, int end) {
    int beforeFrom = Math.max(from, first - NOISE_READINGS);
    int afterTo = Math.min(to, end + NOISE_READINGS);
    boolean beforeTells = first - beforeFrom >= LEAST_READINGS;
    boolean afterTells = afterTo - end >= LEAST_READINGS;
    double noiseMm = standOffMm / LIMIT_SD;
    if (!beforeTells && !afterTells) {
      return usualNoiseMm < noiseMm;
    }
    return (!beforeTells || quieterThan(noiseMm, beforeFrom, first))
        && (!afterTells || quieterThan(noiseMm, end, afterTo));
  }

  /** Whether the median size of the second differences is below that of noise of a given size. */
  private boolean quieterThan(double noiseMm, int start, int end) {
    double limit = noiseMm * MEDIAN_BEND_PER_NOISE;
    int below = 0;
    for (int i = start + 1; i < end - 1; i++) {
      below += Math.abs(bend(i)) < limit ? 1 : 0;
    }
    return 2 * below > end - start - 2;
  }

  private double bend(int index) {
    return bend(depthMm, index);
  }

  private static double bend(double[] depthMm, int index) {
    return depthMm[index + 1] - 2 * depthMm[index] + depthMm[index - 1];
  }

  /**
   * Noise over a whole season from evenly spread bends [mm], for runs too short to tell.
   *
   * @param depthMm readings in time order [mm], finite
   */
  static double usualNoiseMm(double[] depthMm) {
    int stride = Math.max(1, depthMm.length / USUAL_SAMPLE);
    int count = depthMm.length < 3 ? 0 : (depthMm.length - 3) / stride + 1;
    double[] bends = new double[count];
    for (int i = 0; i < count; i++) {
      bends[i] = Math.abs(bend(depthMm, i * stride + 1));
    }
    return count == 0 ? 0 : Robust.medianInPlace(bends, count) / MEDIAN_BEND_PER_NOISE;
  }
}
