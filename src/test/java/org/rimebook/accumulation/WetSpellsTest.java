package org.rimebook.accumulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What fell in a spell by the minute: faint, then rain, then faint again. */
class WetSpellsTest {

  private static final int NODES = 60;
  private static final int RAIN_FROM = 25;
  private static final int RAIN_TO = 40;
  private static final double SD_MM = 0.01;

  /** The catch where the level rises before and after the rain by some amount in all. */
  private static double[] caughtMm(double tailMm) {
    double[] level = new double[NODES];
    double[] wet = new double[NODES];
    for (int link = 0; link + 1 < NODES; link++) {
      boolean rain = link >= RAIN_FROM && link < RAIN_TO;
      boolean tail = !rain && link >= RAIN_FROM - 10 && link < RAIN_TO + 10;
      wet[link] = rain ? 0.9 : tail ? 0.1 : 0;
      level[link + 1] = level[link] + (rain ? 0.1 : tail ? tailMm / 10 : 0);
    }
    return caught(level, wet);
  }

  private static double[] caught(double[] level, double[] wet) {
    long[] time = new long[NODES];
    Arrays.setAll(time, i -> 60_000L * i);
    double[] variance = new double[NODES];
    Arrays.fill(variance, SD_MM * SD_MM);
    LevelNodes.Link[] links = new LevelNodes.Link[NODES - 1];
    Arrays.fill(links, LevelNodes.Link.STEP);
    int[] none = new int[NODES];
    SwitchingSmoother.Result result =
        new SwitchingSmoother.Result(
            new double[NODES], wet, new double[NODES], level, variance, SmootherMarks.NONE);
    return WetSpells.of(
            new LevelNodes(time, level, none, none, links),
            new Smoothing(result, 1e-6, variance, variance))
        .caughtMm();
  }

  private static double sum(double[] caughtMm, int from, int to) {
    return Arrays.stream(caughtMm, from, to).sum();
  }

  @Test
  void aFaintTailWithinItsUncertaintyIsOfTheRain() {
    double[] caught = caughtMm(SD_MM);
    assertThat(sum(caught, 0, RAIN_FROM)).isZero();
    assertThat(sum(caught, RAIN_TO, NODES - 1)).isZero();
    assertThat(sum(caught, RAIN_FROM, RAIN_TO)).isCloseTo(1.5 + 2 * SD_MM, within(1e-9));
  }

  @Test
  void aTailBeyondItsUncertaintyStaysWhereItFell() {
    double[] caught = caughtMm(3 * SD_MM);
    assertThat(sum(caught, 0, RAIN_FROM)).isCloseTo(3 * SD_MM, within(1e-9));
    assertThat(sum(caught, RAIN_TO, NODES - 1)).isCloseTo(3 * SD_MM, within(1e-9));
  }
}
