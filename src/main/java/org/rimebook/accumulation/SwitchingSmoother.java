package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rimebook.station.Progress;

/**
 * Level and rain state together, given all readings of the season: a Kalman filter for each pair of
 * states with collapsed mixtures and the matching backward pass (Kim 1994, J. Econometrics 60,
 * 1–22; citation from memory). In a dry state all readings of the spell share one level, so noise
 * averages out; in a wet state the level follows the readings as far as their noise allows.
 */
final class SwitchingSmoother {

  private static final int S = RainStates.COUNT;

  /** Pairs of states less likely than this are left out of the sums. */
  private static final double NEGLIGIBLE = 1e-9;

  /** Variance of the rise over a gap, where any amount may have fallen [mm²]. */
  private static final double GAP_VARIANCE_MM2 = 1e4;

  /** Nodes between two words on progress: some milliseconds. */
  private static final int PROGRESS_NODES = 1 << 13;

  private static final String WORDS = "smoothing the level";

  private final LevelNodes nodes;
  private final double[] noiseMm2;
  private final RainStates states;
  private final Map<Long, RainStates.Step> steps = new HashMap<>();

  private final double[] mean;
  private final double[] variance;
  private final double[] probability;

  private final double[] weight = new double[S * S];
  private final double[] innovationMm = new double[S * S];
  private final double[] expectedMm2 = new double[S * S];
  private final double[] misfit = new double[S * S];

  private final double[] catchMm;
  private final double[] wet;
  private final double[] gain;
  private final double[] levelMm;
  private final double[] levelMm2;

  private final Bounds bounds;
  private Progress progress = Progress.NONE;

  private SwitchingSmoother(LevelNodes nodes, double[] noiseMm2, RainStates states, Bounds bounds) {
    int n = nodes.size();
    this.bounds = bounds;
    this.nodes = nodes;
    this.noiseMm2 = noiseMm2;
    this.states = states;
    this.mean = new double[n * S];
    this.variance = new double[n * S];
    this.probability = new double[n * S];
    this.catchMm = new double[n];
    this.wet = new double[n];
    this.gain = new double[n];
    this.levelMm = new double[n];
    this.levelMm2 = new double[n];
  }

  /**
   * What the smoother knows. Elements of links are those of {@link LevelNodes#links()}.
   *
   * @param catchMm by link: expected rise while wet [mm]; over a gap the whole rise
   * @param wet by link: probability of a wet state
   * @param gain by link: share of the later level's error that the earlier level shares
   * @param levelMm by node: level [mm]
   * @param levelMm2 by node: variance of the level [mm²]
   * @param marks what it knew on the way
   */
  record Result(
      double[] catchMm,
      double[] wet,
      double[] gain,
      double[] levelMm,
      double[] levelMm2,
      SmootherMarks marks) {}

  /**
   * What is known where the nodes begin and end, of nodes beyond.
   *
   * @param before level and state at the first node, given all up to it
   * @param after level and state at the last node, given the whole season
   */
  record Bounds(Optional<SmootherMarks.State> before, Optional<SmootherMarks.State> after) {

    /** Nodes that are a whole season. */
    static final Bounds NONE = new Bounds(Optional.empty(), Optional.empty());
  }

  static Result smooth(
      LevelNodes nodes, double[] noiseMm2, RainStates states, Bounds bounds, Progress progress) {
    SwitchingSmoother smoother = new SwitchingSmoother(nodes, noiseMm2, states, bounds);
    smoother.progress = progress;
    return smoother.run();
  }

  private Result run() {
    if (nodes.size() == 0) {
      return new Result(catchMm, wet, gain, levelMm, levelMm2, SmootherMarks.NONE);
    }
    filter();
    List<SmootherMarks.State> filtered = marks();
    SmootherMarks.State last = state(nodes.size() - 1);
    bounds.after().ifPresent(state -> enter(nodes.size() - 1, state));
    smoothBackwards();
    return new Result(
        catchMm, wet, gain, levelMm, levelMm2, new SmootherMarks(filtered, marks(), last));
  }

  private List<SmootherMarks.State> marks() {
    return IntStream.iterate(0, t -> t < nodes.size(), t -> t + SmootherMarks.EVERY)
        .mapToObj(this::state)
        .toList();
  }

  private SmootherMarks.State state(int t) {
    return new SmootherMarks.State(
        Arrays.copyOfRange(mean, t * S, t * S + S),
        Arrays.copyOfRange(variance, t * S, t * S + S),
        Arrays.copyOfRange(probability, t * S, t * S + S));
  }

  private void enter(int t, SmootherMarks.State state) {
    System.arraycopy(state.meanMm(), 0, mean, t * S, S);
    System.arraycopy(state.varianceMm2(), 0, variance, t * S, S);
    System.arraycopy(state.probability(), 0, probability, t * S, S);
  }

  private RainStates.Step step(int link) {
    long second = Math.round(nodes.hours(link) * 3600);
    return steps.computeIfAbsent(second, s -> states.over(s / 3600.0));
  }

  private void filter() {
    restart(0, nodes.levelMm()[0], noiseMm2[0]);
    bounds.before().ifPresent(state -> enter(0, state));
    for (int t = 1; t < nodes.size(); t++) {
      if (t % PROGRESS_NODES == 0) {
        progress.step(WORDS, 0.7 * t / nodes.size());
      }
      switch (nodes.links()[t - 1]) {
        case STEP -> filterStep(t);
        case GAP, LATE -> filterGap(t);
        case BREAK -> restart(t, nodes.levelMm()[t], noiseMm2[t]);
      }
    }
  }

  private void restart(int t, double level, double levelVariance) {
    double[] prior = RainStates.prior();
    for (int s = 0; s < S; s++) {
      mean[t * S + s] = level;
      variance[t * S + s] = levelVariance;
      probability[t * S + s] = prior[s];
    }
  }

  private void filterGap(int t) {
    double[] before = collapse((t - 1) * S);
    double predicted = before[1] + GAP_VARIANCE_MM2;
    double k = predicted / (predicted + noiseMm2[t]);
    restart(t, before[0] + k * (nodes.levelMm()[t] - before[0]), (1 - k) * predicted);
  }

  private double[] collapse(int at) {
    double m = 0;
    for (int s = 0; s < S; s++) {
      m += probability[at + s] * mean[at + s];
    }
    double v = 0;
    for (int s = 0; s < S; s++) {
      double d = mean[at + s] - m;
      v += probability[at + s] * (variance[at + s] + d * d);
    }
    return new double[] {m, v};
  }

  private void filterStep(int t) {
    RainStates.Step step = step(t - 1);
    double best = innovations(t, step);
    double total = 0;
    for (int j = 0; j < S; j++) {
      Mixture next = new Mixture();
      for (int i = 0; i < S; i++) {
        int pair = i * S + j;
        if (weight[pair] > 0) {
          double likelihood =
              StrictMath.exp(0.5 * (best - misfit[pair])) / Math.sqrt(expectedMm2[pair]);
          double spread = expectedMm2[pair] - noiseMm2[t];
          double k = spread / expectedMm2[pair];
          double level = nodes.levelMm()[t] - (1 - k) * innovationMm[pair];
          next.add(weight[pair] * likelihood, level, (1 - k) * spread);
        }
      }
      int at = t * S + j;
      probability[at] = next.weight;
      total += next.weight;
      mean[at] = next.weight > 0 ? next.mean() : nodes.levelMm()[t];
      variance[at] = next.weight > 0 ? next.variance() : noiseMm2[t];
    }
    for (int j = 0; j < S; j++) {
      probability[t * S + j] /= total;
    }
  }

  /** Works out how each pair of states fits the reading; returns the least misfit. */
  private double innovations(int t, RainStates.Step step) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < S; i++) {
      int from = (t - 1) * S + i;
      for (int j = 0; j < S; j++) {
        int pair = i * S + j;
        double w = probability[from] * step.to()[i][j];
        weight[pair] = w < NEGLIGIBLE ? 0 : w;
        if (w >= NEGLIGIBLE) {
          double innovation = nodes.levelMm()[t] - mean[from] - step.meanMm()[j];
          double expected = variance[from] + step.varianceMm2()[j] + noiseMm2[t];
          innovationMm[pair] = innovation;
          expectedMm2[pair] = expected;
          misfit[pair] = innovation * innovation / expected;
          best = Math.min(best, misfit[pair]);
        }
      }
    }
    return best;
  }

  private void smoothBackwards() {
    int last = nodes.size() - 1;
    describe(last);
    for (int t = last - 1; t >= 0; t--) {
      if (t % PROGRESS_NODES == 0) {
        progress.step(WORDS, 1 - 0.3 * t / nodes.size());
      }
      switch (nodes.links()[t]) {
        case STEP -> smoothStep(t);
        case GAP, LATE -> {
          describe(t);
          catchMm[t] = levelMm[t + 1] - levelMm[t];
          wet[t] = 1;
        }
        case BREAK -> describe(t);
      }
    }
  }

  private void describe(int t) {
    double[] collapsed = collapse(t * S);
    levelMm[t] = collapsed[0];
    levelMm2[t] = collapsed[1];
  }

  /** Replaces the filtered state at t by the smoothed one; the state at t + 1 already is. */
  private void smoothStep(int t) {
    RainStates.Step step = step(t);
    Mixture[] smoothed = new Mixture[S];
    for (int i = 0; i < S; i++) {
      smoothed[i] = new Mixture();
    }
    for (int j = 0; j < S; j++) {
      double later = probability[(t + 1) * S + j];
      if (later >= NEGLIGIBLE) {
        smoothInto(smoothed, t, j, step);
      }
    }
    double total = 0;
    for (Mixture m : smoothed) {
      total += m.weight;
    }
    for (int i = 0; i < S; i++) {
      int at = t * S + i;
      probability[at] = smoothed[i].weight / total;
      if (smoothed[i].weight > 0) {
        mean[at] = smoothed[i].mean();
        variance[at] = smoothed[i].variance();
      }
    }
    describe(t);
  }

  private void smoothInto(Mixture[] smoothed, int t, int j, RainStates.Step step) {
    int to = (t + 1) * S + j;
    double reach = 0;
    for (int i = 0; i < S; i++) {
      reach += probability[t * S + i] * step.to()[i][j];
    }
    for (int i = 0; i < S; i++) {
      int from = t * S + i;
      double joint = probability[to] * probability[from] * step.to()[i][j] / reach;
      if (joint < NEGLIGIBLE) {
        continue;
      }
      double spread = variance[from] + step.varianceMm2()[j];
      double share = variance[from] / spread;
      double level = mean[from] + share * (mean[to] - mean[from] - step.meanMm()[j]);
      double levelVariance = variance[from] + share * share * (variance[to] - spread);
      smoothed[i].add(joint, level, levelVariance);
      gain[t] += joint * share;
      catchMm[t] += joint * (mean[to] - level);
      if (j > 0) {
        wet[t] += joint;
      }
    }
  }

  /** A weighted mixture of normal distributions, kept as its first moments. */
  private static final class Mixture {
    private double weight;
    private double first;
    private double second;
    private double within;
    private double origin = Double.NaN;

    void add(double w, double m, double v) {
      if (Double.isNaN(origin)) {
        origin = m;
      }
      double d = m - origin;
      weight += w;
      first += w * d;
      second += w * d * d;
      within += w * v;
    }

    double mean() {
      return origin + first / weight;
    }

    double variance() {
      double d = first / weight;
      return Math.max(0, within / weight + second / weight - d * d);
    }
  }
}
