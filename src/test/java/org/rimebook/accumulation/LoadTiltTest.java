package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;

/** A wire's departure that goes with the load, under a sun that moves it every day. */
class LoadTiltTest {

  private static final int PER_HOUR = 6;
  private static final int NODES = 60 * 24 * PER_HOUR;
  private static final double SLOPE = 0.006;

  private final double[] levelMm = new double[NODES];
  private final double[] departureMm = new double[NODES];

  /** Storms of 8 mm in four hours every other day, at any hour of the day. */
  private LevelNodes nodes(double slope, double stormMm) {
    Random chance = new Random(7);
    long[] timeMs = new long[NODES];
    double level = 200;
    for (int i = 0; i < NODES; i++) {
      double hour = i / (double) PER_HOUR;
      timeMs[i] = Bucket.ms(hour);
      boolean storm = hour % 43 > 39;
      level += storm ? stormMm / 4 / PER_HOUR : 0;
      double sun = Math.max(0, Math.sin(2 * Math.PI * (hour - 6) / 24));
      levelMm[i] = level + 0.1 * sun;
      departureMm[i] = slope * level + 0.2 * sun + 0.005 * chance.nextGaussian();
    }
    LevelNodes.Link[] links = new LevelNodes.Link[NODES - 1];
    Arrays.fill(links, LevelNodes.Link.STEP);
    return new LevelNodes(timeMs, levelMm, new int[NODES], new int[NODES], links);
  }

  @Test
  void whatGoesWithTheLoadIsToldFromWhatGoesWithTheSun() {
    LevelNodes nodes = nodes(SLOPE, 8);
    assertThat(LoadTilt.of(nodes, levelMm, departureMm)).isCloseTo(SLOPE, within(0.002));
    nodes = nodes(-SLOPE, 8);
    assertThat(LoadTilt.of(nodes, levelMm, departureMm)).isCloseTo(-SLOPE, within(0.002));
  }

  @Test
  void aWireThatJumpsInOneStormPullsLittle() {
    LevelNodes nodes = nodes(SLOPE, 8);
    for (int i = 41 * PER_HOUR; i < NODES; i++) {
      departureMm[i] += 1;
    }
    assertThat(LoadTilt.of(nodes, levelMm, departureMm)).isCloseTo(SLOPE, within(0.002));
  }

  @Test
  void whereHardlyAnythingFellNothingIsSaid() {
    LevelNodes nodes = nodes(SLOPE, 0.5);
    assertThat(LoadTilt.of(nodes, levelMm, departureMm)).isZero();
  }

  @Test
  void aLevelThatWasEmptiedAndFilledUpAgainTellsNothingAcross() {
    LevelNodes nodes = nodes(0, 0);
    for (int i = NODES / 2; i < NODES; i++) {
      levelMm[i] += 300;
      departureMm[i] += 3;
    }
    nodes.links()[NODES / 2 - 1] = LevelNodes.Link.BREAK;
    assertThat(LoadTilt.of(nodes, levelMm, departureMm)).isZero();
  }
}
