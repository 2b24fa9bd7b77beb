package org.rimebook.practice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.rimebook.station.Interval;

/** What fell, as pulses that may overlap; tells what had fallen by any instant. */
public final class Precipitation {

  private final List<Pulse> pulses;
  private final long[] edgesMs;
  private final double[] byEdgeMm;

  private Precipitation(List<Pulse> pulses) {
    this.pulses =
        pulses.stream().sorted(Comparator.comparingLong(p -> p.interval().fromMs())).toList();
    this.edgesMs =
        pulses.stream()
            .map(Pulse::interval)
            .flatMapToLong(i -> LongStream.of(i.fromMs(), i.toMs()))
            .distinct()
            .sorted()
            .toArray();
    this.byEdgeMm = accumulate();
  }

  /** Precipitation made of pulses, in any order. */
  public static Precipitation of(List<Pulse> pulses) {
    return new Precipitation(pulses);
  }

  private double[] accumulate() {
    double[] between = new double[edgesMs.length];
    for (Pulse pulse : pulses) {
      int edge = Arrays.binarySearch(edgesMs, pulse.interval().fromMs());
      for (; edgesMs[edge] < pulse.interval().toMs(); edge++) {
        between[edge + 1] += pulse.mmBetween(edgesMs[edge], edgesMs[edge + 1]);
      }
    }
    for (int edge = 1; edge < between.length; edge++) {
      between[edge] += between[edge - 1];
    }
    return between;
  }

  /** The pulses by start. */
  public List<Pulse> pulses() {
    return pulses;
  }

  /** What had fallen by an instant [mm]; never falls from one instant to a later one. */
  public double accumulatedMm(long epochMs) {
    int found = Arrays.binarySearch(edgesMs, epochMs);
    if (found >= 0) {
      return byEdgeMm[found];
    }
    int next = -found - 1;
    if (next == 0 || next == edgesMs.length) {
      return next == 0 ? 0 : byEdgeMm[next - 1];
    }
    double share = (double) (epochMs - edgesMs[next - 1]) / (edgesMs[next] - edgesMs[next - 1]);
    return byEdgeMm[next - 1] + share * (byEdgeMm[next] - byEdgeMm[next - 1]);
  }

  /** What fell in an interval [mm]. */
  public double amountMm(Interval interval) {
    return accumulatedMm(interval.toMs()) - accumulatedMm(interval.fromMs());
  }

  /** The same with an interval kept dry. */
  public Precipitation without(Interval dry) {
    List<Pulse> left = new ArrayList<>();
    for (Pulse pulse : pulses) {
      Interval whole = pulse.interval();
      if (whole.overlaps(dry)) {
        addPart(left, pulse, whole.fromMs(), Math.min(whole.toMs(), dry.fromMs()));
        addPart(left, pulse, Math.max(whole.fromMs(), dry.toMs()), whole.toMs());
      } else {
        left.add(pulse);
      }
    }
    return new Precipitation(left);
  }

  private static void addPart(List<Pulse> parts, Pulse pulse, long fromMs, long toMs) {
    if (toMs > fromMs) {
      parts.add(new Pulse(new Interval(fromMs, toMs), pulse.mmBetween(fromMs, toMs)));
    }
  }

  /** The same with more. */
  public Precipitation with(Pulse... more) {
    return new Precipitation(Stream.concat(pulses.stream(), Stream.of(more)).toList());
  }
}
