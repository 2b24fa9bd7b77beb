package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is judged of the noise of single values. */
class NodeNoiseTest {

  private static final int NODES = 600;
  private static final int ODD = 300;
  private static final double SD_MM = 0.02;

  /** A value a minute, rising at some rate, with white noise. */
  private static double[] level(double mmPerH) {
    Random random = new Random(4);
    double[] level = new double[NODES];
    Arrays.setAll(level, i -> 200 + mmPerH * i / 60 + SD_MM * random.nextGaussian());
    return level;
  }

  private static double[] sdMm(double... levelMm) {
    long[] time = new long[NODES];
    Arrays.setAll(time, i -> 60_000L * i);
    int[] ones = new int[NODES];
    Arrays.fill(ones, 1);
    LevelNodes.Link[] links = new LevelNodes.Link[NODES - 1];
    Arrays.fill(links, LevelNodes.Link.STEP);
    LevelNodes nodes = new LevelNodes(time, levelMm, ones, new int[NODES], links);
    return Arrays.stream(NodeNoise.judge(nodes, Optional.empty()).varianceMm2())
        .map(Math::sqrt)
        .toArray();
  }

  @Test
  void aValueThatStandsOffBothNeighboursIsGivenNoiseToMatch() {
    double[] level = level(0);
    double usual = sdMm(level)[ODD];
    assertThat(usual).isCloseTo(SD_MM, within(0.2 * SD_MM));
    level[ODD] = Math.max(level[ODD - 1], level[ODD + 1]) + 10 * usual;
    double[] sd = sdMm(level);
    assertThat(sd[ODD]).isBetween(3.5 * usual, 4.5 * usual);
    assertThat(sd[ODD - 1]).isCloseTo(usual, within(0.2 * usual));
    assertThat(sd[ODD + 1]).isCloseTo(usual, within(0.2 * usual));
  }

  @Test
  void aBurstIsNotTakenForNoise() {
    double[] level = level(0.5);
    for (int i = ODD; i < NODES; i++) {
      level[i] += 50 * SD_MM * Math.min(3, i - ODD + 1);
    }
    assertThat(sdMm(level)[ODD]).isCloseTo(SD_MM, within(0.3 * SD_MM));
    assertThat(sdMm(level)[ODD + 1]).isCloseTo(SD_MM, within(0.3 * SD_MM));
  }
}
