package org.rimebook.accumulation;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * What of the level was judged noise and what drift, by time. Nodes are the means of the readings
 * of a minute at most. Immutable.
 */
public final class LevelJudgement {

  private final long[] timeMs;
  private final double[] noiseMm2;
  private final double[] temperatureMm;
  private final double[] departuresMm;
  private final double[] waveMm;

  private LevelJudgement(long[] timeMs, double[] noiseMm2, Drift summed) {
    this.timeMs = timeMs;
    this.noiseMm2 = noiseMm2;
    this.temperatureMm = summed.temperatureMm();
    this.departuresMm = summed.departuresMm();
    this.waveMm = summed.waveMm();
  }

  private LevelJudgement(LevelNodes nodes, double[] noiseMm2, Drift drift) {
    this.timeMs = nodes.timeMs();
    this.noiseMm2 = noiseMm2;
    this.temperatureMm = withoutBreaks(nodes, drift.temperatureMm());
    this.departuresMm = withoutBreaks(nodes, drift.departuresMm());
    this.waveMm = withoutBreaks(nodes, drift.waveMm());
  }

  /**
   * Drift by node.
   *
   * @param temperatureMm what the temperature adds to the level [mm]
   * @param departuresMm what goes with the wires' departures from their mean [mm]
   * @param waveMm what the daily wave has added since the first node [mm]
   */
  record Drift(double[] temperatureMm, double[] departuresMm, double[] waveMm) {}

  static LevelJudgement of(LevelNodes nodes, double[] noiseMm2, Drift drift) {
    return new LevelJudgement(nodes, noiseMm2, drift);
  }

  /** Of a season without a usable level. */
  static LevelJudgement none(LevelNodes nodes) {
    double[] nothing = new double[nodes.size()];
    return new LevelJudgement(nodes, nothing, new Drift(nothing, nothing, nothing));
  }

  /**
   * This judgement with another in the place of some nodes.
   *
   * @param other of some nodes, which begin and end with nodes of this one, or where it does
   */
  LevelJudgement with(LevelJudgement other) {
    if (other.timeMs.length == 0 || timeMs.length == 0) {
      return this;
    }
    int from = firstAfter(other.timeMs[0] - 1);
    int to = firstAfter(other.timeMs[other.timeMs.length - 1]);
    Drift drift =
        new Drift(
            joined(temperatureMm, other.temperatureMm, from, to),
            joined(departuresMm, other.departuresMm, from, to),
            joined(waveMm, other.waveMm, from, to));
    int size = from + other.timeMs.length + timeMs.length - to;
    long[] times = Arrays.copyOf(timeMs, size);
    double[] noise = Arrays.copyOf(noiseMm2, size);
    int after = from + other.timeMs.length;
    System.arraycopy(other.timeMs, 0, times, from, other.timeMs.length);
    System.arraycopy(timeMs, to, times, after, timeMs.length - to);
    System.arraycopy(other.noiseMm2, 0, noise, from, other.timeMs.length);
    System.arraycopy(noiseMm2, to, noise, after, timeMs.length - to);
    return new LevelJudgement(times, noise, drift);
  }

  /** Sums that go on from each other, those of another part in the place of [from, to). */
  private static double[] joined(double[] own, double[] other, int from, int to) {
    double[] joined = new double[from + other.length + own.length - to];
    System.arraycopy(own, 0, joined, 0, from);
    double lift = from < own.length ? own[from] - other[0] : 0;
    for (int i = 0; i < other.length; i++) {
      joined[from + i] = other[i] + lift;
    }
    int after = from + other.length;
    double back = joined[after - 1] - (to > 0 ? own[to - 1] : 0);
    for (int i = to; i < own.length; i++) {
      joined[after + i - to] = own[i] + back;
    }
    return joined;
  }

  /** The part as it adds up over time in which the level compares. */
  private static double[] withoutBreaks(LevelNodes nodes, double[] partMm) {
    double[] sum = new double[partMm.length];
    for (int i = 1; i < sum.length; i++) {
      boolean compares = nodes.links()[i - 1] != LevelNodes.Link.BREAK;
      sum[i] = sum[i - 1] + (compares ? partMm[i] - partMm[i - 1] : 0);
    }
    return sum;
  }

  /** Nodes after an instant, up to and with another. */
  public int nodes(long fromMs, long toMs) {
    return firstAfter(toMs) - firstAfter(fromMs);
  }

  /**
   * Standard deviation of the noise of a node that its neighbours don't share [mm], root mean
   * square over the nodes after an instant, up to and with another; empty when there is none.
   */
  public OptionalDouble noiseMm(long fromMs, long toMs) {
    return Arrays.stream(noiseMm2, firstAfter(fromMs), firstAfter(toMs)).average().stream()
        .map(Math::sqrt)
        .findFirst();
  }

  /** The drift taken off the level between two instants; none where the level doesn't compare. */
  public DriftTaken taken(long fromMs, long toMs) {
    return new DriftTaken(
        at(temperatureMm, toMs) - at(temperatureMm, fromMs),
        at(departuresMm, toMs) - at(departuresMm, fromMs),
        at(waveMm, toMs) - at(waveMm, fromMs));
  }

  private int firstAfter(long epochMs) {
    int found = Arrays.binarySearch(timeMs, epochMs);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** On a straight line between nodes; that of the first or last node outside. */
  private double at(double[] partMm, long epochMs) {
    int after = firstAfter(epochMs);
    if (after == 0 || after == timeMs.length) {
      return partMm.length == 0 ? 0 : partMm[Math.min(after, partMm.length - 1)];
    }
    double share = (epochMs - timeMs[after - 1]) / (double) (timeMs[after] - timeMs[after - 1]);
    return partMm[after - 1] + share * (partMm[after] - partMm[after - 1]);
  }
}
