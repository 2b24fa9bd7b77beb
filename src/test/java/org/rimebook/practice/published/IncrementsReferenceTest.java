package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The steps of the neutral aggregating filter (Pan et al. 2016; Ross, Smith & Barr 2020) followed
 * by hand, with P* = 0.1 mm and our order of neighbours.
 */
class IncrementsReferenceTest {

  private static double[] settled(double... incrementMm) {
    return Increments.ofLevels(levels(incrementMm)).settle(0.1).incrementMm();
  }

  private static double residual(double... incrementMm) {
    return Increments.ofLevels(levels(incrementMm)).settle(0.1).residualMm();
  }

  private static double[] levels(double... incrementMm) {
    double[] level = new double[incrementMm.length + 1];
    for (int i = 0; i < incrementMm.length; i++) {
      level[i + 1] = level[i] + incrementMm[i];
    }
    return level;
  }

  @Test
  void smallAndNegativeIncrementsGoToTheirNeighbours() {
    // -0.2 to 0.3 rather than 0.05; then -0.1 to 0.5; then 0.05 to what is left of it.
    assertThat(settled(0, 0.3, -0.2, 0.05, 0.5, -0.1)).containsExactly(0, 0.1, 0, 0, 0.45, 0);
  }

  @Test
  void ofTwoNeighboursAsNearTheLargerTakes() {
    assertThat(settled(0.3, -0.1, 0.5)).containsExactly(0.3, 0, 0.4);
    assertThat(settled(0.5, -0.1, 0.3)).containsExactly(0.4, 0, 0.3);
  }

  @Test
  void ofTwoNeighboursAsNearAndLargeTheEarlierTakes() {
    assertThat(settled(0.4, -0.1, 0.4)).containsExactly(0.3, 0, 0.4);
  }

  @Test
  void theNearerNeighbourTakesThoughItIsSmaller() {
    assertThat(settled(0.9, 0, -0.1, 0.2)).containsExactly(0.9, 0, 0, 0.1);
  }

  @Test
  void aNeighbourThatFallsBelowZeroHasItsOwnTurn() {
    // -0.5 makes 0.2 into -0.3, which goes on to 0.6.
    assertThat(settled(0.6, 0, 0.2, -0.5)).containsExactly(0.3, 0, 0, 0);
  }

  @Test
  void anIncrementOfExactlyTheThresholdStays() {
    assertThat(settled(0.1, 0.1, 0.1)).containsExactly(0.1, 0.1, 0.1);
  }

  @Test
  void drizzleIsGatheredUntilItReachesTheThreshold() {
    // The first 0.04 makes the second 0.08, above the third; the third then makes it 0.12.
    assertThat(settled(0.04, 0.04, 0.04)).containsExactly(0, 0.12, 0);
  }

  @Test
  void aFallingLevelSettlesToNothingAndLeavesItsNet() {
    assertThat(settled(0.1, -0.3, 0.05)).containsOnly(0);
    assertThat(residual(0.1, -0.3, 0.05)).isCloseTo(-0.15, within(1e-9));
  }

  @Test
  void aNetBelowTheThresholdIsLeftOver() {
    assertThat(settled(0.04, 0.02)).containsOnly(0);
    assertThat(residual(0.04, 0.02)).isCloseTo(0.06, within(1e-9));
  }
}
