package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.List;

/**
 * What the smoother knew at every so many nodes, on its way forth and back, so that it can take up
 * its way at any of them.
 *
 * @param filtered given all up to the node
 * @param backwards given all from the node on; its weights are likelihoods of the states
 * @param last at the last node, given all up to it
 */
record SmootherMarks(List<State> filtered, List<State> backwards, State last) {

  /** Nodes from one mark to the next. */
  static final int EVERY = 64;

  /** Of no nodes. */
  static final SmootherMarks NONE =
      new SmootherMarks(
          List.of(), List.of(), new State(new double[0], new double[0], new double[0]));

  // Far below what a total shows; own choice.
  private static final double SAME_MM = 1e-4;
  private static final double SAME_SHARE = 1e-3;

  /**
   * Level and rain state at a node, one element a state.
   *
   * @param meanMm level [mm]
   * @param varianceMm2 its variance [mm²]
   * @param probability of the state
   */
  record State(double[] meanMm, double[] varianceMm2, double[] probability) {

    /** The same where the level counts from elsewhere. */
    State lifted(double byMm) {
      return new State(
          Arrays.stream(meanMm).map(m -> m + byMm).toArray(), varianceMm2, probability);
    }

    /** Whether it makes no difference to catch or its uncertainty which of two it is. */
    boolean isAsGoodAs(State other) {
      double apart = 0;
      for (int s = 0; s < probability.length; s++) {
        apart += Math.abs(probability[s] - other.probability[s]);
      }
      return apart < SAME_SHARE
          && Math.abs(levelMm() - other.levelMm()) < SAME_MM
          && Math.abs(variance() - other.variance()) < SAME_SHARE * other.variance();
    }

    private double levelMm() {
      double sum = 0;
      for (int s = 0; s < probability.length; s++) {
        sum += probability[s] * meanMm[s];
      }
      return sum;
    }

    private double variance() {
      double level = levelMm();
      double sum = 0;
      for (int s = 0; s < probability.length; s++) {
        double d = meanMm[s] - level;
        sum += probability[s] * (varianceMm2[s] + d * d);
      }
      return sum;
    }
  }
}
