package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.depth.Robust;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;

/**
 * The level hour by hour, for what goes on for days. Changes are the median of the wires', so that
 * one that creeps doesn't count, and free of what temperature usually does to wires, see {@link
 * UsualTemperature}. A step is an hour, or as many blocks as a sampling interval needs.
 */
final class HourlyLevel {

  private static final long HOUR_MS = 3_600_000;
  private static final long DAY_MS = 24 * HOUR_MS;

  /** A rise this many times the usual change is catch; own choice. */
  private static final double CATCH_SDS = 3.5;

  /** A smaller rise isn't taken for catch [mm]; own choice. */
  private static final double LEAST_CATCH_MM = 0.06;

  private final Blocks blocks;
  private final int perStep;
  private final double[][] depthMm;
  private final int[] segment;
  private final double[] airDegC;
  private final boolean[] wet;
  private final int[] wetBefore;

  private HourlyLevel(Scene scene) {
    blocks = scene.blocks();
    perStep = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    int size = blocks.size() / perStep;
    segment = new int[size];
    airDegC = means(blocks.channel(Channel.AIR_TEMPERATURE));
    depthMm = new double[scene.depths().wires()][size];
    fillSegments();
    for (int wire = 0; wire < depthMm.length; wire++) {
      fill(wire, UsualTemperature.perDegC(scene, wire));
    }
    wet = new boolean[size];
    wetBefore = new int[size + 1];
    fillWet();
  }

  static HourlyLevel of(Scene scene) {
    return new HourlyLevel(scene);
  }

  private void fillSegments() {
    for (int step = 0; step < segment.length; step++) {
      segment[step] = blocks.segment(step * perStep);
      for (int i = 1; i < perStep; i++) {
        int own = blocks.segment(step * perStep + i);
        segment[step] = own == segment[step] ? own : -1;
      }
    }
  }

  private void fill(int wire, double perDegC) {
    double[] values = new double[perStep];
    for (int step = 0; step < segment.length; step++) {
      int count = 0;
      for (int i = 0; i < perStep; i++) {
        double value = blocks.depthMm(wire, step * perStep + i);
        if (Double.isFinite(value)) {
          values[count++] = value;
        }
      }
      double median = count == 0 ? Double.NaN : Robust.medianInPlace(values, count);
      double degC = airDegC.length == 0 ? 0 : airDegC[step];
      depthMm[wire][step] = Double.isFinite(degC) ? median * (1 - perDegC * degC) : Double.NaN;
    }
  }

  private void fillWet() {
    for (int over : new int[] {1, 3}) {
      int most = Math.max(1, over * (int) (HOUR_MS / stepMs()));
      double limit = Math.max(LEAST_CATCH_MM, CATCH_SDS * usualChangeMm(most));
      for (int step = 0; step + most < size(); step++) {
        if (changeMm(step, step + most) > limit) {
          Arrays.fill(wet, step, step + most + 1, true);
        }
      }
    }
    for (int step = 0; step < size(); step++) {
      wetBefore[step + 1] = wetBefore[step] + (wet[step] ? 1 : 0);
    }
  }

  /** Robust standard deviation of changes over so many steps [mm]; 0 when there are none. */
  private double usualChangeMm(int over) {
    double[] changes = new double[size()];
    int count = 0;
    for (int step = 0; step + over < size(); step++) {
      double change = changeMm(step, step + over);
      if (Double.isFinite(change)) {
        changes[count++] = change;
      }
    }
    return count == 0 ? 0 : Robust.sdInPlace(changes, count);
  }

  private double[] means(double[] channel) {
    if (channel.length == 0) {
      return channel;
    }
    double[] means = new double[segment.length];
    for (int step = 0; step < means.length; step++) {
      means[step] =
          Arrays.stream(channel, step * perStep, (step + 1) * perStep)
              .filter(Double::isFinite)
              .average()
              .orElse(Double.NaN);
    }
    return means;
  }

  int size() {
    return segment.length;
  }

  /** Length of a step [ms]. */
  long stepMs() {
    return perStep * blocks.lengthMs();
  }

  /** Steps in a time, at least one. */
  int steps(long ms) {
    return (int) Math.max(1, ms / stepMs());
  }

  int stepsPerDay() {
    return steps(DAY_MS);
  }

  long startMs(int step) {
    return blocks.startMs(step * perStep);
  }

  Interval span(int from, int to) {
    return new Interval(startMs(from), startMs(to));
  }

  int segment(int step) {
    return segment[step];
  }

  /** Mean air temperature from a step up to another [°C]; NaN when it isn't known. */
  double airDegC(int from, int to) {
    return airDegC.length == 0
        ? Double.NaN
        : Arrays.stream(airDegC, from, to).filter(Double::isFinite).average().orElse(Double.NaN);
  }

  /** Whether there is any air temperature. */
  boolean knowsAir() {
    return Arrays.stream(airDegC).anyMatch(Double::isFinite);
  }

  /** Whether something was caught in any step from one up to another. */
  boolean wet(int from, int to) {
    return wetBefore[to] > wetBefore[from];
  }

  /** What the level gained from a step to another [mm]; NaN where they don't compare. */
  double changeMm(int from, int to) {
    if (segment[from] < 0 || segment[from] != segment[to]) {
      return Double.NaN;
    }
    double[] changes = new double[depthMm.length];
    int count = 0;
    for (double[] depths : depthMm) {
      double change = depths[to] - depths[from];
      if (Double.isFinite(change)) {
        changes[count++] = change;
      }
    }
    return count == 0 ? Double.NaN : Robust.medianInPlace(changes, count);
  }
}
