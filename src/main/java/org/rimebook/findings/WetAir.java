package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.station.Channel;

/**
 * What the humidity of the air tells of precipitation: how much more usual it is in this record in
 * hours in which the level rises than in those in which it stands still. So a sensor that never
 * shows more than 95 %, and snow that falls at saturation over ice, need no limits of their own;
 * and the fewer hours a record has, the less it tells.
 */
final class WetAir {

  /**
   * In an hour the level rises by so much in precipitation, and by less in none [mm]; own choice.
   */
  private static final double WET_MM = 0.3;

  private static final double DRY_MM = 0.1;

  private static final int BIN_PCT = 5;
  private static final int BINS = 20;

  /**
   * So many hours in each bin are added to those counted, and a share goes to each neighbour; own
   * choice.
   */
  private static final double UNSEEN = 0.5;

  private static final double SHARED = 0.25;

  private final double[] logRatio;

  private WetAir(double[] logRatio) {
    this.logRatio = logRatio;
  }

  /** What humidity tells in a season; nothing where it isn't measured. */
  static WetAir of(Blocks blocks) {
    double[] percent = blocks.channel(Channel.RELATIVE_HUMIDITY);
    if (percent.length == 0) {
      return new WetAir(new double[0]);
    }
    int perHour = RiseHours.perHour(blocks);
    double[] wet = new double[BINS];
    double[] dry = new double[BINS];
    double levelMm = Double.NaN;
    for (int block = 0; block + perHour <= blocks.size(); block += perHour) {
      double now = Fillings.medianMm(blocks, block, block + perHour);
      double humid = Means.of(percent, block, block + perHour);
      if (Double.isFinite(humid) && now - levelMm > WET_MM) {
        wet[bin(humid)]++;
      } else if (Double.isFinite(humid) && Math.abs(now - levelMm) < DRY_MM) {
        dry[bin(humid)]++;
      }
      levelMm = now;
    }
    double[] wetShare = shares(wet);
    double[] dryShare = shares(dry);
    double[] logRatio = new double[BINS];
    Arrays.setAll(logRatio, bin -> StrictMath.log(wetShare[bin] / dryShare[bin]));
    return new WetAir(logRatio);
  }

  private static int bin(double percent) {
    return (int) Math.max(0, Math.min(BINS - 1, Math.floor(percent / BIN_PCT)));
  }

  private static double[] shares(double[] counts) {
    double[] smooth = new double[BINS];
    for (int bin = 0; bin < BINS; bin++) {
      double below = bin > 0 ? SHARED * (counts[bin - 1] + UNSEEN) : 0;
      double above = bin < BINS - 1 ? SHARED * (counts[bin + 1] + UNSEEN) : 0;
      smooth[bin] = counts[bin] + UNSEEN + below + above;
    }
    double sum = Arrays.stream(smooth).sum();
    return Arrays.stream(smooth).map(value -> value / sum).toArray();
  }

  /** Logarithm of how much likelier a humidity [%] is with precipitation than without. */
  double logOdds(double percent) {
    return logRatio.length == 0 || !Double.isFinite(percent) ? 0 : logRatio[bin(percent)];
  }
}
