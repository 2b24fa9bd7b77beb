package org.rimebook.accumulation;

import java.util.Arrays;

/**
 * Takes a smoothed level to catch: nothing outside wet spells, and inside a rise that never turns
 * back, with the same total.
 *
 * <p>Limits are our own choice; {@code src/site/estimator.md} says what they balance.
 */
final class WetSpells {

  /** A spell holds at least one step at least this likely to be wet. */
  private static final double SURE = 0.2;

  /** A spell reaches as far as steps are at least this likely to be wet. */
  private static final double POSSIBLE = 0.004;

  /** Steps at least this likely to be wet are taken to be: likelier than not. */
  private static final double WET = 0.5;

  /** A spell of fewer steps shows no rate of its own. */
  private static final int FEWEST_STEPS = 8;

  /** Readings further apart than this on average don't show how a rate wanders [h]. */
  private static final double LONGEST_STEP_H = 0.1;

  /** Weight that pins the ends of a spell. */
  private static final double PINNED = 1e9;

  private final LevelNodes nodes;
  private final Smoothing smoothing;
  private final double[] caughtMm;
  private final double[] levelMm2;
  private final boolean[] within;

  private WetSpells(LevelNodes nodes, Smoothing smoothing) {
    this.nodes = nodes;
    this.smoothing = smoothing;
    this.caughtMm = new double[Math.max(0, nodes.size() - 1)];
    this.levelMm2 = smoothing.result().levelMm2().clone();
    this.within = new boolean[caughtMm.length];
  }

  /**
   * What fell.
   *
   * @param caughtMm catch of each step [mm], zero outside spells and for links that aren't steps
   * @param levelMm2 variance of the level at each node [mm²]
   * @param within whether each link belongs to a spell, rising or not
   */
  record Catch(double[] caughtMm, double[] levelMm2, boolean[] within) {

    /** Whether a node lies inside a spell, with a link of it on either side. */
    boolean inside(int node) {
      return node > 0 && node < within.length && within[node - 1] && within[node];
    }
  }

  /**
   * Finds the wet spells and what fell in each step of them.
   *
   * @param nodes the level without drift
   * @param smoothing how it was smoothed
   */
  static Catch of(LevelNodes nodes, Smoothing smoothing) {
    WetSpells spells = new WetSpells(nodes, smoothing);
    spells.find();
    return new Catch(spells.caughtMm, spells.levelMm2, spells.within);
  }

  /** Whether no spell holds the links about a node. */
  static boolean quietAbout(LevelNodes nodes, Smoothing smoothing, int node) {
    boolean quiet = true;
    for (int link = Math.max(0, node - 1); link <= node && link < nodes.links().length; link++) {
      quiet &=
          nodes.links()[link] != LevelNodes.Link.STEP || smoothing.result().wet()[link] < POSSIBLE;
    }
    return quiet;
  }

  private void find() {
    double[] wet = smoothing.result().wet();
    int link = 0;
    while (link < caughtMm.length) {
      int end = link;
      boolean sure = false;
      while (end < caughtMm.length
          && nodes.links()[end] == LevelNodes.Link.STEP
          && wet[end] >= POSSIBLE) {
        sure |= wet[end] >= SURE;
        end++;
      }
      if (sure) {
        rising(level(link, end), link, end);
      }
      link = Math.max(end, link + 1);
    }
  }

  /** The level through a spell [mm]; where it surely is wet, by the rate that suits it best. */
  private double[] level(int from, int to) {
    double[] level = Arrays.copyOfRange(smoothing.result().levelMm(), from, to + 1);
    double[] wet = smoothing.result().wet();
    int link = from;
    while (link < to) {
      int end = link;
      while (end < to && wet[end] >= WET) {
        end++;
      }
      if (end - link >= FEWEST_STEPS && dense(link, end)) {
        RateSmoother.Path path =
            new RateSmoother(nodes, smoothing, link, end)
                .smooth(
                    new double[] {level[link - from], levelMm2[link]},
                    new double[] {level[end - from], levelMm2[end]});
        System.arraycopy(path.levelMm(), 1, level, link - from + 1, end - link - 1);
        System.arraycopy(path.levelMm2(), 1, levelMm2, link + 1, end - link - 1);
      }
      link = Math.max(end, link + 1);
    }
    return level;
  }

  private boolean dense(int from, int to) {
    double hours = (nodes.timeMs()[to] - nodes.timeMs()[from]) / 3_600_000.0;
    return hours <= (to - from) * LONGEST_STEP_H;
  }

  /**
   * Moves what rose before the first and after the last wet step of a spell into it, unless it is
   * more than its own uncertainty: a faint tail is likelier to be of the rain than beside it.
   */
  private void gather(double[] level, int from, int to) {
    double[] wet = smoothing.result().wet();
    int first = from;
    while (first < to && wet[first] < WET) {
      first++;
    }
    int last = to;
    while (last > first && wet[last - 1] < WET) {
      last--;
    }
    if (first == last) {
      return;
    }
    if (level[first - from] - level[0] <= uncertaintyMm(from, first)) {
      Arrays.fill(level, 0, first - from + 1, level[0]);
    }
    if (level[to - from] - level[last - from] <= uncertaintyMm(last, to)) {
      Arrays.fill(level, last - from, to - from, level[to - from]);
    }
  }

  private double uncertaintyMm(int node, int other) {
    return Math.sqrt(levelMm2[node] + levelMm2[other]);
  }

  private void rising(double[] level, int from, int to) {
    double[] weight = new double[level.length];
    Arrays.fill(weight, 1);
    weight[0] = PINNED;
    weight[level.length - 1] = PINNED;
    if (level[level.length - 1] <= level[0]) {
      return;
    }
    Arrays.fill(within, from, to, true);
    if (dense(from, to)) {
      gather(level, from, to);
    }
    double[] fitted = Isotonic.fit(level, weight);
    for (int i = from; i < to; i++) {
      caughtMm[i] = fitted[i - from + 1] - fitted[i - from];
    }
  }
}
