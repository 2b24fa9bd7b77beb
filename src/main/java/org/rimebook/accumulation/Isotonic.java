package org.rimebook.accumulation;

/**
 * Weighted least-squares non-decreasing fit by pooling adjacent violators (Ayer et al. 1955, Ann.
 * Math. Stat. 26, 641; citation from memory). Blocks of equal value keep the weighted mean of what
 * they replace.
 */
final class Isotonic {

  private Isotonic() {}

  /**
   * The non-decreasing fit.
   *
   * @param values values in order
   * @param weights positive weight of each
   */
  static double[] fit(double[] values, double[] weights) {
    int n = values.length;
    double[] mean = new double[n];
    double[] weight = new double[n];
    int[] count = new int[n];
    int blocks = 0;
    for (int i = 0; i < n; i++) {
      mean[blocks] = values[i];
      weight[blocks] = weights[i];
      count[blocks] = 1;
      blocks++;
      while (blocks > 1 && mean[blocks - 2] > mean[blocks - 1]) {
        double total = weight[blocks - 2] + weight[blocks - 1];
        mean[blocks - 2] =
            (mean[blocks - 2] * weight[blocks - 2] + mean[blocks - 1] * weight[blocks - 1]) / total;
        weight[blocks - 2] = total;
        count[blocks - 2] += count[blocks - 1];
        blocks--;
      }
    }
    double[] fitted = new double[n];
    int at = 0;
    for (int block = 0; block < blocks; block++) {
      for (int i = 0; i < count[block]; i++) {
        fitted[at++] = mean[block];
      }
    }
    return fitted;
  }
}
