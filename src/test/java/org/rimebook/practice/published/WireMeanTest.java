package org.rimebook.practice.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.practice.published.Depths.NONE;

import org.junit.jupiter.api.Test;

class WireMeanTest {

  private static double[] mean(double[]... depthMm) {
    return Depths.wire(WireMean.of(Depths.every(1, depthMm)), 0);
  }

  @Test
  void completeRowsGiveThePlainMean() {
    assertThat(mean(new double[] {1, 5}, new double[] {2, 6}, new double[] {6, 7}))
        .containsExactly(3, 6);
  }

  @Test
  void aWireLostAndBackMakesNoStep() {
    assertThat(
            mean(
                new double[] {400, 401, 402, 403},
                new double[] {403, NONE, NONE, 406},
                new double[] {406, 407, 408, 409}))
        .containsExactly(new double[] {403, 404, 405, 406}, within(1e-9));
  }

  @Test
  void aWireAloneCarriesOnTheMean() {
    assertThat(
            mean(
                new double[] {400, NONE, NONE},
                new double[] {403, NONE, 404},
                new double[] {406, 406.5, NONE}))
        .containsExactly(new double[] {403, 403.5, 404}, within(1e-9));
  }

  @Test
  void rowsWithoutAnyReadingAreLeftOut() {
    WireLevels mean = WireMean.of(Depths.every(1, new double[] {400, NONE, 401}));
    assertThat(Depths.minutesOf(mean)).containsExactly(0, 2);
    assertThat(Depths.wire(mean, 0)).containsExactly(400, 401);
  }

  @Test
  void theDistanceOfAWireFollowsItSlowly() {
    // The wires part by 2 mm and the second is lost: 1/32 of the parting is known by then.
    assertThat(mean(new double[] {400, 401, 401}, new double[] {400, 399, NONE})[2])
        .isCloseTo(401 - 1.0 / 32, within(1e-9));
  }
}
