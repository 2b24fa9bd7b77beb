package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Progress;

class OffsetHabitTest {

  private static final int DAY = 144;
  private static final int ROWS = 10 * DAY;
  private static final int LOST = 3 * DAY + 20;
  private static final int BACK = 7 * DAY + 71;

  /** Ten days in steps of ten minutes, tilted daily by the sun in one direction, in noise. */
  private static double[][] sunnyWires(double direction, double noiseMm) {
    Random random = new Random(17);
    double[][] wires = new double[3][ROWS];
    for (int wire = 0; wire < 3; wire++) {
      double share = Math.cos(direction + 2 * Math.PI * wire / 3);
      for (int row = 0; row < ROWS; row++) {
        double sun = Math.max(0, Math.sin(2 * Math.PI * row / DAY)) * (1 + row / DAY % 3) / 3;
        wires[wire][row] = 100 + 1.2 * share * sun + noiseMm * random.nextGaussian();
      }
    }
    return wires;
  }

  private static LevelSeries levels(double[][] wires) {
    ConvertedWires converted =
        ConvertedWires.of(
            Gauges.record(10 * Gauges.MINUTE_MS, wires), Gauges.sheet(3), Progress.NONE);
    return WireCombiner.combine(converted, Gauges.depths(wires), Notebook.EMPTY, Progress.NONE);
  }

  private static double worstMm(LevelSeries levels) {
    double worst = 0;
    for (int i = 0; i < levels.size(); i++) {
      worst = Math.max(worst, Math.abs(levels.levelMm(i) - 100));
    }
    return worst;
  }

  @Test
  void tiltThatKeepsToOneDirectionDoesNotShowWhileAWireIsAway() {
    double[][] wires = sunnyWires(0.6, 0);
    Arrays.fill(wires[1], LOST, BACK, Double.NaN);
    assertThat(worstMm(levels(wires))).isLessThan(1e-9);
  }

  @Test
  void itDoesNotShowAfterAWireIsLostForGoodEither() {
    double[][] wires = sunnyWires(0.6, 0);
    Arrays.fill(wires[1], LOST, ROWS, Double.NaN);
    assertThat(worstMm(levels(wires))).isLessThan(1e-9);
  }

  @Test
  void noiseHardlyWeakensTheRelation() {
    double[][] wires = sunnyWires(0.6, 0.03);
    Arrays.fill(wires[1], LOST, BACK, Double.NaN);
    // The mean of the other two alone would be off by half of its tilt, 0.5 mm.
    assertThat(worstMm(levels(wires))).isLessThan(0.2);
  }

  @Test
  void aDisturbanceShowsBesideTheTiltThatIsExpected() {
    double[][] wires = sunnyWires(0.6, 0.01);
    Arrays.fill(wires[1], LOST, BACK, Double.NaN);
    for (int row = BACK; row < ROWS; row++) {
      wires[1][row] += 2.5;
    }
    assertThat(worstMm(levels(wires))).isLessThan(0.1);
  }

  @Test
  void wiresWithoutARelationAreNotForcedIntoOne() {
    double[][] wires = sunnyWires(0.6, 0);
    Random random = new Random(3);
    for (double[] wire : wires) {
      for (int row = 0; row < ROWS; row++) {
        wire[row] = 100 + 0.1 * random.nextGaussian();
      }
    }
    double[][] whole = Arrays.stream(wires).map(double[]::clone).toArray(double[][]::new);
    Arrays.fill(wires[1], LOST, BACK, Double.NaN);
    LevelSeries levels = levels(wires);
    double offset = levels.levelMm(LOST + 50) - 0.5 * (whole[0][LOST + 50] + whole[2][LOST + 50]);
    for (int i = LOST + 51; i < BACK; i++) {
      double mean = 0.5 * (whole[0][i] + whole[2][i]);
      assertThat(levels.levelMm(i) - mean).isCloseTo(offset, within(0.05));
    }
  }

  @Test
  void permutingWiresChangesNothing() {
    double[][] wires = sunnyWires(0.6, 0.03);
    Arrays.fill(wires[1], LOST, BACK, Double.NaN);
    LevelSeries levels = levels(wires);
    LevelSeries turned = levels(new double[][] {wires[2], wires[0], wires[1]});
    LevelSeries swapped = levels(new double[][] {wires[1], wires[0], wires[2]});
    for (int i = 0; i < levels.size(); i++) {
      assertThat(turned.levelMm(i)).isCloseTo(levels.levelMm(i), within(1e-9));
      assertThat(swapped.levelMm(i)).isCloseTo(levels.levelMm(i), within(1e-9));
    }
  }
}
