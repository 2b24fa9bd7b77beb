package org.rimebook.accumulation;

import java.util.Arrays;

/**
 * How far the level wanders while nothing falls. Catch never lowers a level, so its falls over a
 * few hours show the wandering alone; rises of the same size are taken to be as common.
 *
 * <p>Limits are our own choice.
 */
final class DryDrift {

  private static final double LEAST_MM2_PER_H = 0.002 * 0.002;
  private static final double MOST_MM2_PER_H = 0.1 * 0.1;
  private static final int FEWEST = 20;

  /** Hours a fall is taken over. */
  private static final int LAG = 3;

  /** Median of the size of a standard normal error. */
  private static final double MEDIAN = 0.6745;

  /** Leaves less than a thousandth of the span from least to most. */
  private static final int HALVINGS = 14;

  private DryDrift() {}

  /**
   * Variance by which a dry level wanders [mm²/h].
   *
   * @param nodes the level
   * @param varianceMm2 variance of each node [mm²]
   */
  static double mm2PerH(LevelNodes nodes, double[] varianceMm2) {
    BlockMeans means = BlockMeans.of(nodes, varianceMm2, 3_600_000);
    double[] falls = new double[Math.max(1, means.size())];
    double[] noise = new double[Math.max(1, means.size())];
    int count = 0;
    for (int k = LAG; k < means.size(); k++) {
      boolean joined =
          means.run()[k] == means.run()[k - LAG]
              && means.index()[k] - means.index()[k - LAG] == LAG;
      double change = means.levelMm()[k] - means.levelMm()[k - LAG];
      if (joined && change < 0) {
        falls[count] = -change;
        noise[count] = means.varianceMm2()[k] + means.varianceMm2()[k - LAG];
        count++;
      }
    }
    return count < FEWEST ? LEAST_MM2_PER_H : wander(falls, noise, count);
  }

  /**
   * The wander with which half of the falls lie within the median of their own spread: noise may
   * differ from fall to fall by more than the wander itself.
   */
  private static double wander(double[] fallMm, double[] noiseMm2, int count) {
    double low = LEAST_MM2_PER_H;
    double high = MOST_MM2_PER_H;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = Math.sqrt(low * high);
      int beyond = 0;
      for (int k = 0; k < count; k++) {
        beyond += fallMm[k] > MEDIAN * Math.sqrt(noiseMm2[k] + LAG * middle) ? 1 : 0;
      }
      if (2 * beyond > count) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.sqrt(low * high);
  }

  /**
   * Mean levels over blocks of time that lie within one chain of steps.
   *
   * @param index number of the block since 1970
   * @param run number of the chain of steps
   * @param levelMm mean level [mm]
   * @param varianceMm2 variance of the mean if the noise is white [mm²]
   * @param nodes nodes averaged
   * @param firstNode index of the first node averaged
   */
  record BlockMeans(
      long[] index,
      int[] run,
      double[] levelMm,
      double[] varianceMm2,
      int[] nodes,
      int[] firstNode) {

    int size() {
      return index.length;
    }

    static BlockMeans of(LevelNodes nodes, double[] varianceMm2, long blockMs) {
      int n = nodes.size();
      long[] index = new long[n];
      int[] run = new int[n];
      double[] level = new double[n];
      double[] variance = new double[n];
      int[] count = new int[n];
      int[] first = new int[n];
      int size = 0;
      int chain = 0;
      for (int i = 0; i < n; i++) {
        boolean cut = i > 0 && nodes.links()[i - 1] != LevelNodes.Link.STEP;
        chain += cut ? 1 : 0;
        long block = Math.floorDiv(nodes.timeMs()[i] - 1, blockMs);
        if (size == 0 || cut || index[size - 1] != block) {
          index[size] = block;
          run[size] = chain;
          first[size] = i;
          size++;
        }
        int k = size - 1;
        count[k]++;
        level[k] += (nodes.levelMm()[i] - level[k]) / count[k];
        variance[k] += varianceMm2[i];
      }
      for (int k = 0; k < size; k++) {
        variance[k] /= (double) count[k] * count[k];
      }
      return new BlockMeans(
          Arrays.copyOf(index, size),
          Arrays.copyOf(run, size),
          Arrays.copyOf(level, size),
          Arrays.copyOf(variance, size),
          Arrays.copyOf(count, size),
          Arrays.copyOf(first, size));
    }
  }
}
