package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rimebook.practice.DepthEffect;
import org.rimebook.practice.Precipitation;
import org.rimebook.practice.Sampling;
import org.rimebook.practice.Surroundings;
import org.rimebook.practice.bench.Planting;
import org.rimebook.station.Interval;

/** A wire, or the bucket with all its wires, that stays where it is and slips once it is behind. */
final class Sticking implements DepthEffect {

  /** It is behind by this much when it slips [mm]. */
  private static final double LEAST_MM = 0.4;

  private static final double MOST_MM = 1.5;

  /** All wires. */
  static final int ALL = -1;

  /** Behind by less than this, nobody sees that it sticks [mm]. */
  private static final double SEEN_MM = 0.05;

  private final int wire;
  private final int first;
  private final double[] behindMm;
  private final List<Slip> slips = new ArrayList<>();

  /**
   * A slip.
   *
   * @param sinceMs when the catch began to leave it behind [ms since epoch]
   * @param atMs first reading after it [ms since epoch]
   * @param mm by how much
   */
  record Slip(long sinceMs, long atMs, double mm) {}

  /**
   * Draws how it slips.
   *
   * @param wire index of the wire, or {@link #ALL}
   * @param span while something touches; it catches up at the end
   */
  Sticking(Planting planting, int wire, Interval span) {
    this.wire = wire;
    Sampling sampling = planting.builder().surroundings().sampling();
    this.first = sampling.indexAt(span.fromMs());
    this.behindMm = new double[Math.max(1, sampling.indexAt(span.toMs()) - first)];
    Precipitation falling = planting.falling();
    double heldMm = falling.accumulatedMm(sampling.stampMs(first));
    double limitMm = planting.draws().spread(LEAST_MM, MOST_MM);
    long sinceMs = sampling.stampMs(first);
    for (int i = 0; i < behindMm.length; i++) {
      long atMs = sampling.stampMs(first + i);
      double behind = falling.accumulatedMm(atMs) - heldMm;
      boolean last = i == behindMm.length - 1;
      if (behind >= limitMm || last && behind > SEEN_MM) {
        slips.add(new Slip(sinceMs, atMs, behind));
        heldMm += behind;
        behind = 0;
        limitMm = planting.draws().spread(LEAST_MM, MOST_MM);
      }
      sinceMs = behind < SEEN_MM ? atMs : sinceMs;
      behindMm[i] = behind;
    }
  }

  /** Slips of at least a size. */
  List<Slip> slips(double leastMm) {
    return slips.stream().filter(slip -> slip.mm() >= leastMm).toList();
  }

  @Override
  public void apply(Surroundings around, int wire, double[] depthMm) {
    if (this.wire == ALL || wire == this.wire) {
      int to = Math.min(depthMm.length, first + behindMm.length);
      Arrays.setAll(
          depthMm, i -> i < first || i >= to ? depthMm[i] : depthMm[i] - behindMm[i - first]);
    }
  }
}
