package org.rimebook.accumulation;

import java.util.Arrays;
import org.rimebook.depth.Robust;

/**
 * How noise grows with the wind of the same minute, as the season's own readings show it: the
 * robust size of departures in classes of wind that hold as many readings each, joined by straight
 * lines. No form is supposed, and a wind that tells nothing gives the same noise at any wind.
 *
 * <p>Limits are our own choice.
 */
final class NoiseByWind {

  /** Classes of wind; fewer when they would hold too few readings. */
  private static final int CLASSES = 16;

  private static final int FEWEST_IN_CLASS = 100;

  private final double[] windMs;
  private final double[] sdMm;

  private NoiseByWind(double[] windMs, double[] sdMm) {
    this.windMs = windMs;
    this.sdMm = sdMm;
  }

  /**
   * Learns from departures.
   *
   * @param departureMm size of the departure of each node, scaled to the sd of one; NaN if unknown
   * @param nodeWindMs wind at each node [m/s], finite
   * @param leastMm no noise is less [mm]
   */
  static NoiseByWind of(double[] departureMm, double[] nodeWindMs, double leastMm) {
    double[] known = new double[departureMm.length];
    int count = 0;
    for (int i = 0; i < departureMm.length; i++) {
      if (!Double.isNaN(departureMm[i])) {
        known[count++] = nodeWindMs[i];
      }
    }
    Arrays.sort(known, 0, count);
    int classes = Math.min(CLASSES, count / FEWEST_IN_CLASS);
    double[] wind = new double[classes];
    double[] sd = new double[classes];
    double[] magnitudes = new double[departureMm.length];
    for (int c = 0; c < classes; c++) {
      double low = known[(int) ((long) count * c / classes)];
      double high = known[(int) ((long) count * (c + 1) / classes) - 1];
      int size = 0;
      for (int i = 0; i < departureMm.length; i++) {
        if (nodeWindMs[i] >= low && nodeWindMs[i] <= high && !Double.isNaN(departureMm[i])) {
          magnitudes[size++] = departureMm[i];
        }
      }
      wind[c] = known[(int) ((long) count * (2 * c + 1) / (2 * classes))];
      sd[c] = Math.max(leastMm, Robust.sdFromMagnitudesInPlace(magnitudes, size));
    }
    return new NoiseByWind(wind, sd);
  }

  /** Size of the noise at a wind [mm], on average over the season; 1 when nothing is known. */
  double at(double nodeWindMs) {
    if (windMs.length == 0) {
      return 1;
    }
    int after = Arrays.binarySearch(windMs, nodeWindMs);
    after = after < 0 ? -after - 1 : after;
    if (after == 0 || after == windMs.length) {
      return sdMm[Math.min(after, windMs.length - 1)];
    }
    double width = windMs[after] - windMs[after - 1];
    double share = width > 0 ? (nodeWindMs - windMs[after - 1]) / width : 0.5;
    return sdMm[after - 1] + share * (sdMm[after] - sdMm[after - 1]);
  }
}
