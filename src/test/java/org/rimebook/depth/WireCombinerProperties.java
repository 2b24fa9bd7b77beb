package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class WireCombinerProperties {

  private static final int ROWS = 600;
  private static final int[][] ORDERS = {{0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

  /** Three wires on a bucket that only gains, with noise, each reading absent now and then. */
  private static double[][] raggedWires(long seed, double absentShare, double noiseMm) {
    Random random = new Random(seed);
    double[][] wires = new double[3][ROWS];
    boolean[] out = new boolean[3];
    double level = 100;
    for (int row = 0; row < ROWS; row++) {
      level += random.nextInt(20) == 0 ? random.nextDouble() : 0;
      for (int wire = 0; wire < 3; wire++) {
        if (random.nextInt(out[wire] ? 15 : 60) == 0) {
          out[wire] = !out[wire];
        }
        boolean absent = out[wire] || random.nextDouble() < absentShare;
        wires[wire][row] = absent ? Double.NaN : level + 3 * wire + noiseMm * random.nextGaussian();
      }
    }
    return wires;
  }

  /** Depths of three wires on a tilted bucket: 120° apart, so that tilt sums to nothing. */
  private static double[][] tilted(double[] level, double tiltMm, double direction) {
    double[][] wires = new double[3][level.length];
    for (int wire = 0; wire < 3; wire++) {
      double share = Math.cos(direction + 2 * Math.PI * wire / 3);
      for (int row = 0; row < level.length; row++) {
        // One swing over the series: the tilt returns.
        double swing = Math.sin(2 * Math.PI * row / (level.length - 1));
        wires[wire][row] = level[row] + tiltMm * share * swing;
      }
    }
    return wires;
  }

  private static double[] rain(long seed) {
    Random random = new Random(seed);
    double[] level = new double[ROWS];
    double depth = 50;
    for (int row = 0; row < ROWS; row++) {
      depth += random.nextInt(10) == 0 ? random.nextDouble() : 0;
      level[row] = depth;
    }
    return level;
  }

  private static void remove(double[] wire, int from, int to) {
    Arrays.fill(wire, from, to, Double.NaN);
  }

  @Property(tries = 150)
  void permutingWiresChangesNothing(
      @ForAll long seed, @ForAll @IntRange(max = 4) int order, @ForAll boolean noisy) {
    double[][] wires = raggedWires(seed, 0.02, noisy ? 0.5 : 0);
    LevelSeries expected = Gauges.levels(wires);
    int[] at = ORDERS[order];
    LevelSeries actual = Gauges.levels(wires[at[0]], wires[at[1]], wires[at[2]]);
    assertThat(actual.size()).isEqualTo(expected.size());
    for (int i = 0; i < expected.size(); i++) {
      assertThat(actual.row(i)).isEqualTo(expected.row(i));
      assertThat(actual.segment(i)).isEqualTo(expected.segment(i));
      assertThat(actual.levelMm(i)).isCloseTo(expected.levelMm(i), within(1e-9));
    }
  }

  @Property(tries = 150)
  void anyPatternOfAbsencesGivesALevelThatFollowsTheBucket(
      @ForAll long seed, @ForAll @DoubleRange(max = 0.6) double absentShare) {
    double[][] wires = raggedWires(seed, absentShare, 0);
    LevelSeries levels = Gauges.levels(wires);
    for (int i = 1; i < levels.size(); i++) {
      if (levels.segment(i) == levels.segment(i - 1)) {
        int wire = Integer.numberOfTrailingZeros(levels.wireMask(i) & levels.wireMask(i - 1));
        double truth = wires[wire][levels.row(i)] - wires[wire][levels.row(i - 1)];
        assertThat(levels.levelMm(i) - levels.levelMm(i - 1)).isCloseTo(truth, within(1e-9));
      }
    }
  }

  @Property(tries = 100)
  void tiltNeverShowsWhileAllWiresArePresent(
      @ForAll long seed,
      @ForAll @DoubleRange(max = 5) double tiltMm,
      @ForAll @DoubleRange(max = 6.3) double direction) {
    double[] level = rain(seed);
    LevelSeries levels = Gauges.levels(tilted(level, tiltMm, direction));
    for (int i = 0; i < levels.size(); i++) {
      assertThat(levels.levelMm(i)).isCloseTo(level[i], within(1e-9));
    }
  }

  @Property(tries = 200)
  void aWireRemovedForAnyStretchLeavesTheTotalAsItIs(
      @ForAll long seed,
      @ForAll @IntRange(max = 2) int wire,
      @ForAll @IntRange(min = 1, max = ROWS - 2) int from,
      @ForAll @IntRange(min = 1, max = ROWS - 2) int length,
      @ForAll @DoubleRange(max = 6.3) double direction) {
    double[] level = rain(seed);
    double[][] wires = tilted(level, 0.3, direction);
    remove(wires[wire], from, Math.min(ROWS - 1, from + length));
    LevelSeries levels = Gauges.levels(wires);
    assertThat(levels.levelMm(levels.size() - 1) - levels.levelMm(0))
        .isCloseTo(level[ROWS - 1] - level[0], within(1e-9));
  }

  @Property(tries = 200)
  void aWireLostOrBackNeverMakesAStepEvenWhenDisturbed(
      @ForAll long seed,
      @ForAll @IntRange(max = 2) int wire,
      @ForAll @IntRange(min = 1, max = ROWS - 2) int from,
      @ForAll @IntRange(min = 1, max = ROWS - 2) int length,
      @ForAll @DoubleRange(min = -50, max = 50) double shiftMm) {
    double[] level = rain(seed);
    double[][] wires = tilted(level, 0, 0);
    int to = Math.min(ROWS - 1, from + length);
    remove(wires[wire], from, to);
    // Either small enough to pass for tilt and then bridged, or a disturbance.
    double shift = Math.abs(shiftMm) < 3 ? 0 : shiftMm;
    for (int row = to; row < ROWS; row++) {
      wires[wire][row] += shift;
    }
    LevelSeries levels = Gauges.levels(wires);
    for (int i = 0; i < levels.size(); i++) {
      assertThat(levels.levelMm(i) - levels.levelMm(0))
          .isCloseTo(level[i] - level[0], within(1e-9));
    }
  }

  @Property(tries = 100)
  void aConstantLoadChangesNoDifference(
      @ForAll long seed, @ForAll @DoubleRange(max = 300) double loadMm) {
    double[][] wires = raggedWires(seed, 0.02, 0.1);
    double[][] loaded =
        Arrays.stream(wires)
            .map(w -> Arrays.stream(w).map(d -> d + loadMm).toArray())
            .toArray(double[][]::new);
    LevelSeries light = Gauges.levels(wires);
    LevelSeries heavy = Gauges.levels(loaded);
    assertThat(heavy.size()).isEqualTo(light.size());
    for (int i = 0; i < light.size(); i++) {
      assertThat(heavy.levelMm(i) - light.levelMm(i)).isCloseTo(loadMm, within(1e-9));
    }
  }
}
