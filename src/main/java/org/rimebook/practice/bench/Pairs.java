package org.rimebook.practice.bench;

import java.util.Arrays;

/**
 * What fell and what is said of it, over the same spans. Takes copies.
 *
 * @param truthMm what fell [mm]
 * @param estimateMm what is said of it [mm]
 */
record Pairs(double[] truthMm, double[] estimateMm) {

  Pairs {
    truthMm = truthMm.clone();
    estimateMm = estimateMm.clone();
    if (truthMm.length != estimateMm.length) {
      throw new IllegalArgumentException(
          estimateMm.length + " values for a truth of " + truthMm.length);
    }
  }

  int size() {
    return truthMm.length;
  }

  boolean wet(int span) {
    return truthMm[span] > 0;
  }

  double errorMm(int span) {
    return estimateMm[span] - truthMm[span];
  }

  double fellMm() {
    return Arrays.stream(truthMm).sum();
  }

  /** Error of the sum of all. */
  double totalErrorMm() {
    return Arrays.stream(estimateMm).sum() - fellMm();
  }

  /** Root mean square of the errors [mm]; NaN when there is no span. */
  double rmseMm() {
    double sum = 0;
    for (int span = 0; span < size(); span++) {
      sum += errorMm(span) * errorMm(span);
    }
    return Math.sqrt(sum / size());
  }
}
