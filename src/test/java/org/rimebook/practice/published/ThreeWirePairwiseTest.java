package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ThreeWirePairwiseTest {

  private static double[] hourly(WireLevels levels, int hours) {
    return new ThreeWirePairwise().hourlyCatchMm(levels, Depths.hours(hours));
  }

  private static double[] plus(double mm, double... depthMm) {
    double[] sum = new double[depthMm.length];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = depthMm[i] + mm;
    }
    return sum;
  }

  @Test
  void incrementsFallInTheHourOfTheirStamp() {
    double[] level = {400, 400.5, 401, 403};
    double[] minutes = {50, 55, 60, 65};
    assertThat(hourly(Depths.at(minutes, level, plus(7, level), plus(-3, level)), 2))
        .containsExactly(new double[] {1, 2}, within(1e-9));
  }

  @Test
  void oneWireThatRisesAloneIsNotCatch() {
    double[] still = {400, 400, 400, 400};
    double[] rising = {400, 401, 402, 403};
    assertThat(hourly(Depths.every(5, still, still, rising), 1)).containsExactly(0);
  }

  @Test
  void aFallIsNotCatchAndTheNextRiseIs() {
    double[] level = {400, 399, 400};
    assertThat(hourly(Depths.every(5, level, level, level), 1))
        .containsExactly(new double[] {1}, within(1e-9));
  }

  @Test
  void aGaugeWithOneWireIsBelieved() {
    assertThat(hourly(Depths.every(5, new double[] {400, 400.2, 400.4}), 1))
        .containsExactly(new double[] {0.4}, within(1e-9));
  }

  @Test
  void aFourthWireIsNotAsked() {
    double[] level = {400, 401};
    double[] wild = {400, 440};
    assertThat(hourly(Depths.every(5, level, level, level, wild), 1))
        .containsExactly(new double[] {1}, within(1e-9));
  }
}
