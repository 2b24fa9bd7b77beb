package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.depth.Robust;
import org.rimebook.station.Channel;

/** Depth of snow beside the gauge, smoothed over three hours [cm]. */
final class SnowOnGround {

  private static final long HOUR_MS = 3_600_000;
  private static final double CM_PER_M = 100;

  /** Growth smaller than this may be the sensor's [cm]; own choice. */
  private static final double LEAST_CM = 1.5;

  /** As many times the usual change over six hours; own choice. */
  private static final double SURE_SDS = 4;

  private final double[] depthCm;
  private final double sureCm;

  private SnowOnGround(double[] depthCm, double sureCm) {
    this.depthCm = depthCm;
    this.sureCm = sureCm;
  }

  /** The depth in a season's blocks; none when the station doesn't measure it. */
  static SnowOnGround of(Blocks blocks) {
    double[] metres = blocks.channel(Channel.SNOW_DEPTH);
    int side = (int) Math.max(1, 3 * HOUR_MS / 2 / blocks.lengthMs());
    double[] depthCm = new double[metres.length];
    double[] window = new double[2 * side + 1];
    for (int block = 0; block < depthCm.length; block++) {
      int count = 0;
      int last = Math.min(metres.length - 1, block + side);
      for (int other = Math.max(0, block - side); other <= last; other++) {
        if (Double.isFinite(metres[other])) {
          window[count++] = CM_PER_M * metres[other];
        }
      }
      depthCm[block] = count < side ? Double.NaN : Robust.medianInPlace(window, count);
    }
    int sixHours = (int) Math.max(1, 6 * HOUR_MS / blocks.lengthMs());
    double sureCm = Math.max(LEAST_CM, SURE_SDS * usualCm(depthCm, sixHours));
    return new SnowOnGround(depthCm, sureCm);
  }

  /** Usual change over a time [cm] beyond that of the time before: settling snow sinks on. */
  private static double usualCm(double[] depthCm, int apart) {
    double[] bends = new double[depthCm.length];
    int count = 0;
    for (int block = 2 * apart; block < depthCm.length; block++) {
      double bend = depthCm[block] - 2 * depthCm[block - apart] + depthCm[block - 2 * apart];
      if (Double.isFinite(bend)) {
        bends[count++] = Math.abs(bend);
      }
    }
    return count == 0 ? 0 : Robust.sdFromMagnitudesInPlace(bends, count) / Math.sqrt(3);
  }

  /** Whether the depth is known anywhere. */
  boolean known() {
    return Arrays.stream(depthCm).anyMatch(Double::isFinite);
  }

  /** Growth that the sensor can't have made up [cm]. */
  double sureCm() {
    return sureCm;
  }

  /**
   * The largest growth within some blocks.
   *
   * @param from block at which the depth was least
   * @param to block at which it was most
   * @param cm the growth [cm]; 0 when there is none
   */
  record Growth(int from, int to, double cm) {}

  /** The largest growth from a block up to another. */
  Growth growth(int from, int to) {
    Growth most = new Growth(from, from, 0);
    int least = -1;
    for (int block = Math.max(0, from); block < Math.min(depthCm.length, to); block++) {
      if (Double.isFinite(depthCm[block])) {
        if (least < 0 || depthCm[block] <= depthCm[least]) {
          least = block;
        } else if (depthCm[block] - depthCm[least] > most.cm()) {
          most = new Growth(least, block, depthCm[block] - depthCm[least]);
        }
      }
    }
    return most;
  }

  /** Share of some blocks in which the depth is known. */
  double knownShare(int from, int to) {
    long known = Arrays.stream(depthCm, from, to).filter(Double::isFinite).count();
    return to <= from ? 0 : known / (double) (to - from);
  }
}
