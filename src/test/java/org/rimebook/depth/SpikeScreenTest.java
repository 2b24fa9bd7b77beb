package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SpikeScreenTest {

  private static boolean[] spikes(double... depthMm) {
    boolean[] spike = new boolean[depthMm.length];
    double usualMm = SpikeScreen.usualNoiseMm(depthMm);
    new SpikeScreen(depthMm, i -> ConvertedWire.SPIKE_FLOOR_MM, usualMm)
        .mark(0, depthMm.length, spike);
    return spike;
  }

  /** Readings with a calm hour of the last value after them, so that the noise is known. */
  private static boolean[] spikesBeforeCalm(double... depthMm) {
    double[] longer = Arrays.copyOf(depthMm, depthMm.length + 60);
    Arrays.fill(longer, depthMm.length, longer.length, depthMm[depthMm.length - 1]);
    return Arrays.copyOf(spikes(longer), depthMm.length);
  }

  private static int count(boolean[] spike) {
    int count = 0;
    for (boolean s : spike) {
      count += s ? 1 : 0;
    }
    return count;
  }

  private static double[] noise(long seed, int size, double sdMm) {
    Random random = new Random(seed);
    double[] depth = new double[size];
    for (int i = 0; i < size; i++) {
      depth[i] = 100 + sdMm * random.nextGaussian();
    }
    return depth;
  }

  @Test
  void oneReadingThatStandsOffIsASpike() {
    assertThat(spikesBeforeCalm(1, 1, 1, 6, 1, 1, 1)).containsExactly(f(7, 3));
    assertThat(spikesBeforeCalm(9, 9, 9, 2, 9, 9, 9)).containsExactly(f(7, 3));
  }

  @Test
  void twoReadingsInARowThatStandOffAreSpikes() {
    assertThat(spikesBeforeCalm(1, 1, 1, 6, 7, 1, 1, 1)).containsExactly(f(8, 3, 4));
  }

  @Test
  void threeReadingsInARowAreNotIsolated() {
    assertThat(count(spikesBeforeCalm(1, 1, 1, 1, 6, 6.1, 6, 1, 1, 1, 1))).isZero();
  }

  @Test
  void aSpikeUpBesideASpikeDownAreBothFound() {
    assertThat(spikesBeforeCalm(5, 5, 5, 5, 25, -15, 5, 5, 5, 5)).containsExactly(f(10, 4, 5));
  }

  @Test
  void aSpikeOnAHeavyRampIsFound() {
    double[] depth = new double[61];
    for (int i = 0; i < depth.length; i++) {
      depth[i] = 0.5 * i;
    }
    depth[30] += 8;
    assertThat(spikes(depth)).containsExactly(f(61, 30));
  }

  @Test
  void theFirstAndTheLastReadingAreNeverSpikes() {
    double[] depth = new double[60];
    depth[0] = 50;
    depth[59] = 50;
    assertThat(count(spikes(depth))).isZero();
  }

  @Property(tries = 200)
  void whatNeverFallsHoldsNoSpike(@ForAll long seed) {
    Random random = new Random(seed);
    double[] depth = new double[300];
    double level = 0;
    for (int i = 0; i < depth.length; i++) {
      // Calm, rain of 30 mm/h by the minute, and single jumps of many millimetres.
      int weather = random.nextInt(3);
      level += weather == 0 ? 0 : weather == 1 ? 0.5 : 20 * random.nextDouble();
      depth[i] = level;
    }
    assertThat(count(spikes(depth))).isZero();
  }

  @Test
  void windOfHalfAMillimetreIsNotTakenForSpikes() {
    int size = 1_000_000;
    // Fewer than one reading in 10 000, the asked rate; the seed fixes the count.
    assertThat(count(spikes(noise(7, size, 0.5)))).isLessThan(size / 10_000);
  }

  @Test
  void theOnsetOfWindIsNotTakenForSpikes() {
    int taken = 0;
    for (int season = 0; season < 1000; season++) {
      double[] depth = noise(season, 80, 0.5);
      for (int i = 0; i < 40; i++) {
        depth[i] = 100 + 0.02 * (depth[i] - 100);
      }
      taken += count(spikes(depth));
    }
    assertThat(taken).isLessThan(40);
  }

  @Test
  void spikesOfFiveMillimetresInCalmAreFound() {
    int size = 400_000;
    double[] depth = noise(11, size, 0.03);
    Random random = new Random(12);
    int planted = 0;
    for (int i = 50; i < size - 50; i += 20 + random.nextInt(100)) {
      depth[i] += (random.nextBoolean() ? 1 : -1) * (5 + 20 * random.nextDouble());
      planted++;
    }
    boolean[] spike = spikes(depth);
    int found = 0;
    for (int i = 0; i < size; i++) {
      found += spike[i] && Math.abs(depth[i] - 100) > 4 ? 1 : 0;
    }
    assertThat(found).isGreaterThanOrEqualTo((int) Math.ceil(0.99 * planted));
    assertThat(count(spike) - found).isZero();
  }

  /** Flags of a given length, set at the indices. */
  private static boolean[] f(int size, int... set) {
    boolean[] flags = new boolean[size];
    for (int i : set) {
      flags[i] = true;
    }
    return flags;
  }
}
