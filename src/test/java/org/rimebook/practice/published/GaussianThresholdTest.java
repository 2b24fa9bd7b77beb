package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.practice.published.Depths.NONE;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class GaussianThresholdTest {

  private static double[] hourly(WireLevels levels, int hours) {
    return new GaussianThreshold().hourlyCatchMm(levels, Depths.hours(hours));
  }

  /** A level read from an hour before the grid, so that no boundary lies at an end. */
  private static WireLevels around(int minutes, DoubleUnaryOperator levelMm) {
    int size = minutes + 121;
    double[] at = new double[size];
    double[] depth = new double[size];
    for (int i = 0; i < size; i++) {
      at[i] = i - 60;
      depth[i] = levelMm.applyAsDouble(i - 60);
    }
    return Depths.at(at, depth);
  }

  @Test
  void aSteadyRateIsGivenAsItIs() {
    assertThat(hourly(around(180, minute -> 400 + 0.01 * minute), 3))
        .containsExactly(new double[] {0.6, 0.6, 0.6}, within(1e-9));
  }

  @Test
  void aRiseBelowTheThresholdIsNothing() {
    assertThat(hourly(around(60, minute -> 400 + 0.04 * minute / 60), 1)).containsExactly(0);
    assertThat(hourly(around(60, minute -> 400 + 0.06 * minute / 60), 1))
        .containsExactly(new double[] {0.06}, within(1e-9));
  }

  @Test
  void aFallIsNothing() {
    assertThat(hourly(around(60, minute -> 400 - minute), 1)).containsExactly(0);
  }

  @Test
  void readingsWeighByTheirDistanceFromTheBoundary() {
    // About 01:00: weight 1 for itself and exp(-0.5) for the two readings 3 min, one sd, away.
    double[] minutes = {0, 57, 60, 63};
    double[] level = {400, 400, 401, 403};
    double side = Math.exp(-0.5);
    double expected = (400 * side + 401 + 403 * side) / (1 + 2 * side) - 400;
    assertThat(hourly(Depths.at(minutes, level), 1))
        .containsExactly(new double[] {expected}, within(1e-9));
  }

  @Test
  void catchAcrossAGapBelongsToTheFirstReadingAfter() {
    WireLevels levels =
        Depths.every(30, new double[] {1, 1, 1, NONE, NONE, NONE, NONE, 6, 6, 6, 6});
    assertThat(hourly(levels, 5)).containsExactly(new double[] {0, 0, 0, 5, 0}, within(1e-9));
  }
}
