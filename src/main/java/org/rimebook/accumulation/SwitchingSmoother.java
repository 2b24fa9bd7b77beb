package org.rimebook.accumulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.station.Progress;

/**
 * Level and rain state together, given all readings of the season: two filters of interacting
 * models (Blom & Bar-Shalom 1988, IEEE Trans. Autom. Control 33, 780; citation from memory), one
 * forwards and one backwards in time, held against each other at every link. What either has
 * averaged over hours counts at the link between: a faint spell shows by the step from the dry
 * level before it to that after it, though no reading in it stands out. In a dry state all readings
 * of the spell share one level, so noise averages out; in a wet state the level follows the
 * readings as far as their noise allows.
 */
final class SwitchingSmoother {

  private static final int S = RainStates.COUNT;

  /** No state is ever ruled out. */
  private static final double LEAST_WEIGHT = 1e-100;

  /** Nodes between two words on progress: some milliseconds. */
  private static final int PROGRESS_NODES = 1 << 13;

  private static final String WORDS = "smoothing the level";

  private final LevelNodes nodes;
  private final double[] noiseMm2;
  private final RainStates states;
  private final Map<Long, RainStates.Step> steps = new HashMap<>();

  /** By node and state: what is known of the level before the link to it, and its weight. */
  private final double[] beforeMm;

  private final double[] beforeMm2;
  private final double[] beforeWeight;

  private Mixture filtered = new Mixture();
  private Mixture mixed = new Mixture();
  private final double[] share = new double[S];
  private final double[] misfit = new double[S];

  private final double[] catchMm;
  private final double[] wet;
  private final double[] gain;
  private final double[] levelMm;
  private final double[] levelMm2;

  private final Bounds bounds;
  private final List<SmootherMarks.State> forthMarks = new ArrayList<>();
  private final List<SmootherMarks.State> backMarks = new ArrayList<>();
  private Progress progress = Progress.NONE;

  private SwitchingSmoother(LevelNodes nodes, double[] noiseMm2, RainStates states, Bounds bounds) {
    int n = nodes.size();
    this.bounds = bounds;
    this.nodes = nodes;
    this.noiseMm2 = noiseMm2;
    this.states = states;
    this.beforeMm = new double[n * S];
    this.beforeMm2 = new double[n * S];
    this.beforeWeight = new double[n * S];
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
   * @param after what all from the last node on says of its level, by state
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
    forwards();
    SmootherMarks.State last = filtered.state();
    backwards();
    Collections.reverse(backMarks);
    acrossGaps();
    return new Result(
        catchMm, wet, gain, levelMm, levelMm2, new SmootherMarks(forthMarks, backMarks, last));
  }

  private void mark(List<SmootherMarks.State> marks, int t) {
    if (t % SmootherMarks.EVERY == 0) {
      marks.add(filtered.state());
    }
  }

  /** One normal distribution of the level a state, and the weight of the state. */
  private static final class Mixture {
    private final double[] weight = new double[S];
    private final double[] mean = new double[S];
    private final double[] variance = new double[S];

    void restart(double[] weights, double level, double levelVariance) {
      for (int s = 0; s < S; s++) {
        weight[s] = weights[s];
        mean[s] = level;
        variance[s] = levelVariance;
      }
    }

    SmootherMarks.State state() {
      return new SmootherMarks.State(mean.clone(), variance.clone(), weight.clone());
    }

    void enter(SmootherMarks.State state) {
      System.arraycopy(state.meanMm(), 0, mean, 0, S);
      System.arraycopy(state.varianceMm2(), 0, variance, 0, S);
      System.arraycopy(state.probability(), 0, weight, 0, S);
    }

    /** Makes the weights a sum of one. */
    void scale() {
      double total = 0;
      for (double w : weight) {
        total += w;
      }
      for (int s = 0; s < S; s++) {
        weight[s] = Math.max(LEAST_WEIGHT, weight[s] / total);
      }
    }

    /** Makes one state of this mixture of the states of another, taken with other weights. */
    void mix(int state, Mixture of, double[] share) {
      double w = 0;
      double m = 0;
      for (int s = 0; s < S; s++) {
        w += share[s];
        m += share[s] * (of.mean[s] - of.mean[0]);
      }
      m = of.mean[0] + m / w;
      double v = 0;
      for (int s = 0; s < S; s++) {
        double d = of.mean[s] - m;
        v += share[s] * (of.variance[s] + d * d);
      }
      weight[state] = w;
      mean[state] = m;
      variance[state] = v / w;
    }
  }

  private RainStates.Step step(int link) {
    long second = Math.round(nodes.hours(link) * 3600);
    return steps.computeIfAbsent(second, s -> states.over(s / 3600.0));
  }

  private boolean joined(int link) {
    return nodes.links()[link] == LevelNodes.Link.STEP;
  }

  private void forwards() {
    filtered.restart(RainStates.prior(), nodes.levelMm()[0], noiseMm2[0]);
    bounds.before().ifPresent(filtered::enter);
    mark(forthMarks, 0);
    for (int t = 1; t < nodes.size(); t++) {
      if (t % PROGRESS_NODES == 0) {
        progress.step(WORDS, 0.5 * t / nodes.size());
      }
      if (joined(t - 1)) {
        forth(t);
      } else {
        filtered.restart(RainStates.prior(), nodes.levelMm()[t], noiseMm2[t]);
      }
      mark(forthMarks, t);
    }
  }

  private void forth(int t) {
    RainStates.Step step = step(t - 1);
    for (int j = 0; j < S; j++) {
      for (int i = 0; i < S; i++) {
        share[i] = filtered.weight[i] * step.to()[i][j];
      }
      mixed.mix(j, filtered, share);
    }
    System.arraycopy(mixed.mean, 0, beforeMm, t * S, S);
    System.arraycopy(mixed.variance, 0, beforeMm2, t * S, S);
    System.arraycopy(mixed.weight, 0, beforeWeight, t * S, S);
    for (int j = 0; j < S; j++) {
      mixed.mean[j] += step.meanMm()[j];
      mixed.variance[j] += step.varianceMm2()[j];
    }
    update(mixed, t);
    swap();
  }

  private void swap() {
    Mixture last = filtered;
    filtered = mixed;
    mixed = last;
  }

  /** Takes in the reading of a node. */
  private void update(Mixture level, int t) {
    double best = Double.POSITIVE_INFINITY;
    for (int s = 0; s < S; s++) {
      double innovation = nodes.levelMm()[t] - level.mean[s];
      misfit[s] = innovation * innovation / (level.variance[s] + noiseMm2[t]);
      best = Math.min(best, misfit[s]);
    }
    for (int s = 0; s < S; s++) {
      double expected = level.variance[s] + noiseMm2[t];
      double k = level.variance[s] / expected;
      level.weight[s] *= StrictMath.exp(0.5 * (best - misfit[s])) / Math.sqrt(expected);
      level.mean[s] += k * (nodes.levelMm()[t] - level.mean[s]);
      level.variance[s] *= 1 - k;
    }
    level.scale();
  }

  /** What the readings from a node on say of its level, by state; joined with what came before. */
  private void backwards() {
    double[] flat = new double[S];
    Arrays.fill(flat, 1.0 / S);
    int last = nodes.size() - 1;
    alone(last);
    filtered.restart(flat, nodes.levelMm()[last], noiseMm2[last]);
    bounds.after().ifPresent(filtered::enter);
    mark(backMarks, last);
    for (int t = last - 1; t >= 0; t--) {
      if (t % PROGRESS_NODES == 0) {
        progress.step(WORDS, 1 - 0.5 * t / nodes.size());
      }
      alone(t);
      if (joined(t)) {
        back(t);
      } else {
        filtered.restart(flat, nodes.levelMm()[t], noiseMm2[t]);
      }
      mark(backMarks, t);
    }
  }

  private void back(int t) {
    RainStates.Step step = step(t);
    join(t, step);
    for (int k = 0; k < S; k++) {
      filtered.mean[k] -= step.meanMm()[k];
      filtered.variance[k] += step.varianceMm2()[k];
    }
    // The reading comes before the mixing: where a long link could have brought any amount, levels
    // before it by state lie far apart, and their mixture would say nothing of any.
    update(filtered, t);
    for (int j = 0; j < S; j++) {
      for (int k = 0; k < S; k++) {
        share[k] = filtered.weight[k] * step.to()[j][k];
      }
      mixed.mix(j, filtered, share);
    }
    mixed.scale();
    swap();
  }

  /** A node's level by its own reading, unless a link tells more. */
  private void alone(int t) {
    levelMm[t] = nodes.levelMm()[t];
    levelMm2[t] = noiseMm2[t];
  }

  /** Holds what came before a link against what comes after it, state by state. */
  private void join(int t, RainStates.Step step) {
    Joint joint = new Joint(t);
    double best = Double.POSITIVE_INFINITY;
    for (int k = 0; k < S; k++) {
      int at = (t + 1) * S + k;
      double apart = filtered.mean[k] - beforeMm[at] - step.meanMm()[k];
      misfit[k] = apart * apart / (beforeMm2[at] + step.varianceMm2()[k] + filtered.variance[k]);
      best = Math.min(best, misfit[k]);
    }
    for (int k = 0; k < S; k++) {
      joint.add(k, step, StrictMath.exp(0.5 * (best - misfit[k])));
    }
    wet[t] = joint.wetWeight / joint.end.weight();
    catchMm[t] = joint.rise / joint.end.weight();
    gain[t] = joint.shared / joint.end.weight();
    levelMm[t] = joint.start.mean();
    levelMm2[t] = joint.start.variance();
    if (t + 2 >= nodes.size() || !joined(t + 1)) {
      levelMm[t + 1] = joint.end.mean();
      levelMm2[t + 1] = joint.end.variance();
    }
  }

  /** The levels at both ends of a link as all readings tell them, over all states. */
  private final class Joint {
    private final int node;
    private final Moments start;
    private final Moments end;
    private double wetWeight;
    private double rise;
    private double shared;

    Joint(int node) {
      this.node = node;
      this.start = new Moments(nodes.levelMm()[node]);
      this.end = new Moments(nodes.levelMm()[node + 1]);
    }

    void add(int k, RainStates.Step step, double likelihood) {
      int at = (node + 1) * S + k;
      double before = beforeMm2[at];
      double predicted = before + step.varianceMm2()[k];
      double whole = predicted + filtered.variance[k];
      double w = beforeWeight[at] * filtered.weight[k] * likelihood / Math.sqrt(whole);
      double apart = filtered.mean[k] - beforeMm[at] - step.meanMm()[k];
      double endMm = beforeMm[at] + step.meanMm()[k] + predicted / whole * apart;
      double endMm2 = predicted * filtered.variance[k] / whole;
      double share = before / predicted;
      double startMm = beforeMm[at] + before / whole * apart;
      start.add(w, startMm, before + share * share * (endMm2 - predicted));
      end.add(w, endMm, endMm2);
      shared += w * share;
      if (k >= RainStates.DRY) {
        wetWeight += w;
        rise += w * (endMm - startMm);
      }
    }
  }

  private void acrossGaps() {
    for (int t = 0; t + 1 < nodes.size(); t++) {
      LevelNodes.Link link = nodes.links()[t];
      if (link == LevelNodes.Link.GAP || link == LevelNodes.Link.LATE) {
        catchMm[t] = levelMm[t + 1] - levelMm[t];
        wet[t] = 1;
      }
    }
  }
}
