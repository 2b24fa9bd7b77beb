package org.rimebook.accumulation;

import java.util.Arrays;
import org.rimebook.station.Progress;

/**
 * Tries the estimator on its own answer: the catch it found, under the noise the season showed in
 * its dry time, is estimated anew, and the errors are held against the uncertainties it states.
 * What comes out is the season's own measure of how honest they are (a parametric bootstrap; Efron
 * & Tibshirani 1993, citation from memory).
 *
 * <p>Limits are our own choice.
 */
final class Rehearsal {

  private static final long HOUR_MS = 3_600_000;
  private static final long DAY_MS = 24 * HOUR_MS;
  private static final double DRY = 0.05;
  private static final int FEWEST_NODES = 200;
  private static final int FEWEST_HOURS = 20;

  /** Hours with less [mm] are left out: their errors are those of finding rain at all. */
  private static final double LEAST_MM = 0.02;

  /** Shares of errors within one and two standard uncertainties when they are normal. */
  private static final double WITHIN_ONE = 0.6827;

  private static final double WITHIN_TWO = 0.9545;

  private static final double LEAST_FACTOR = 0.1;
  private static final double MOST_FACTOR = 9;

  private final LevelNodes nodes;
  private final Smoothing smoothing;
  private final double[] caughtMm;
  private final Progress progress;

  private Rehearsal(LevelNodes nodes, Smoothing smoothing, double[] caughtMm, Progress progress) {
    this.progress = progress;
    this.nodes = nodes;
    this.smoothing = smoothing;
    this.caughtMm = caughtMm;
  }

  /**
   * How honest the estimator is about this season.
   *
   * @param varianceFactor factor by which stated variances of levels are to be multiplied
   * @param shareLost size of the error of the whole catch, and of what those of its days come to
   *     together if they are independent, as a share of it
   */
  record Verdict(double varianceFactor, double shareLost) {

    /** Of a season too short to tell. */
    static final Verdict NONE = new Verdict(1, 0);
  }

  /**
   * Rehearses a season.
   *
   * @param nodes the level without drift
   * @param smoothing how it was smoothed
   * @param caughtMm catch by link [mm]
   * @param progress hears of it
   */
  static Verdict of(LevelNodes nodes, Smoothing smoothing, double[] caughtMm, Progress progress) {
    return new Rehearsal(nodes, smoothing, caughtMm, progress).verdict();
  }

  private Verdict verdict() {
    int[] dry = dryNodes();
    if (dry.length < FEWEST_NODES) {
      return Verdict.NONE;
    }
    LevelNodes again = nodes.at(staged(dry));
    Smoothing anew = smoothing.of(again, progress);
    WetSpells.Catch found = WetSpells.of(again, anew);
    double[] ratios = ratios(anew, found);
    if (ratios.length < FEWEST_HOURS) {
      return Verdict.NONE;
    }
    Arrays.sort(ratios);
    double one = ratios[(int) (WITHIN_ONE * (ratios.length - 1))];
    double two = ratios[(int) (WITHIN_TWO * (ratios.length - 1))] / 2;
    double ratio = Math.max(one, two);
    double factor = Math.min(MOST_FACTOR, Math.max(LEAST_FACTOR, ratio * ratio));
    double staged = Arrays.stream(caughtMm).sum();
    double lost = Arrays.stream(found.caughtMm()).sum() / staged - 1;
    return new Verdict(factor, Math.hypot(lost, daily(found.caughtMm()) / staged));
  }

  /** Root of the sum of the squared errors of days [mm]. */
  private double daily(double[] foundMm) {
    double squares = 0;
    double error = 0;
    for (int link = 0; link < foundMm.length; link++) {
      error += foundMm[link] - caughtMm[link];
      boolean last = link + 1 == foundMm.length;
      if (last || nodes.timeMs()[link] / DAY_MS != nodes.timeMs()[link + 1] / DAY_MS) {
        squares += error * error;
        error = 0;
      }
    }
    return Math.sqrt(squares);
  }

  private int[] dryNodes() {
    int[] dry = new int[nodes.size()];
    int count = 0;
    for (int i = 1; i + 1 < nodes.size(); i++) {
      if (smoothing.result().wet()[i - 1] < DRY && smoothing.result().wet()[i] < DRY) {
        dry[count++] = i;
      }
    }
    return Arrays.copyOf(dry, count);
  }

  /** The catch as found under noise taken from dry time, kept in its order and scaled. */
  private double[] staged(int[] dry) {
    double[] level = new double[nodes.size()];
    double truth = 0;
    for (int i = 0; i < level.length; i++) {
      truth += i > 0 ? caughtMm[i - 1] : 0;
      int from = dry[(i + dry.length / 2) % dry.length];
      double noise = nodes.levelMm()[from] - smoothing.result().levelMm()[from];
      double scale = Math.sqrt(smoothing.noiseMm2()[i] / smoothing.noiseMm2()[from]);
      level[i] = truth + noise * scale;
    }
    return level;
  }

  /** Error over stated uncertainty of each hour in which something fell. */
  private double[] ratios(Smoothing anew, WetSpells.Catch caughtAnew) {
    double[] found = caughtAnew.caughtMm();
    CatchSeries.Builder pieces = new CatchSeries.Builder(nodes.timeMs()[0]);
    for (int link = 0; link + 1 < nodes.size(); link++) {
      boolean wet = caughtAnew.within()[link];
      pieces.add(
          wet ? CatchSeries.Kind.WET_STEP : CatchSeries.Kind.DRY_STEP,
          nodes.timeMs()[link + 1],
          found[link],
          anew.ends(link, caughtAnew.levelMm2()));
    }
    CatchSeries series = pieces.build(anew.driftMm2PerH(), 0);
    double[] ratios = new double[nodes.size()];
    int count = 0;
    int link = 0;
    while (link + 1 < nodes.size()) {
      long hour = Math.floorDiv(nodes.timeMs()[link + 1] - 1, HOUR_MS);
      int start = link;
      double truth = 0;
      double error = 0;
      while (link + 1 < nodes.size()
          && Math.floorDiv(nodes.timeMs()[link + 1] - 1, HOUR_MS) == hour) {
        truth += caughtMm[link];
        error += found[link] - caughtMm[link];
        link++;
      }
      if (truth > LEAST_MM) {
        double variance = series.varianceMm2(nodes.timeMs()[start], nodes.timeMs()[link]);
        ratios[count++] = Math.abs(error) / Math.sqrt(Math.max(variance, 1e-12));
      }
    }
    return Arrays.copyOf(ratios, count);
  }
}
