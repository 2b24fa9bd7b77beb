package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Progress;

/** Forty days read every five minutes: four hours of rain a day, white noise, no wander. */
class RehearsalTest {

  private static final int PER_DAY = 288;
  private static final int NODES = 40 * PER_DAY;
  private static final int RAIN_FROM = 100;
  private static final int RAIN_TO = 148;
  private static final double MM_A_STEP = 0.05;
  private static final double SD_MM = 0.02;

  private static Rehearsal.Verdict verdict(double counterMm2) {
    long[] time = new long[NODES];
    Arrays.setAll(time, i -> 300_000L * i);
    double[] level = new double[NODES];
    Random random = new Random(20_241_101L);
    double fell = 0;
    for (int i = 0; i < NODES; i++) {
      int ofDay = i % PER_DAY;
      fell += ofDay >= RAIN_FROM && ofDay < RAIN_TO ? MM_A_STEP : 0;
      level[i] = fell + SD_MM * random.nextGaussian();
    }
    double[] noise = new double[NODES];
    Arrays.fill(noise, SD_MM * SD_MM);
    LevelNodes.Link[] links = new LevelNodes.Link[NODES - 1];
    Arrays.fill(links, LevelNodes.Link.STEP);
    int[] none = new int[NODES];
    LevelNodes nodes = new LevelNodes(time, level, none, none, links);
    Smoothing smoothing = Smoothing.of(nodes, noise, noise, Progress.NONE);
    double[] caughtMm = WetSpells.of(nodes, smoothing).caughtMm();
    return Rehearsal.of(nodes, smoothing, caughtMm, counterMm2, Progress.NONE);
  }

  @Test
  void underTheNoiseTheEstimatorExpectsItIsNearlyAsHonestAsItSays() {
    Rehearsed rehearsed = verdict(0).rehearsed();
    assertThat(rehearsed.withinFactor()).isBetween(0.5, 2.0);
    assertThat(rehearsed.dryFactor()).isBetween(0.3, 2.0);
  }

  @Test
  void whatIsStatedOfACounterIsNotCountedIntoLevelsAgain() {
    Rehearsed without = verdict(0).rehearsed();
    Rehearsed with = verdict(0.25 * SD_MM * SD_MM).rehearsed();
    assertThat(with.withinFactor()).isLessThan(without.withinFactor());
    assertThat(with.dryFactor()).isLessThan(without.dryFactor());
  }

  @Test
  void errorsOfAllDaysTogetherAreTold() {
    assertThat(verdict(0).shareLost()).isBetween(1e-5, 1e-2);
  }
}
