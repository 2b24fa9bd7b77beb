package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Notebook;
import org.rimebook.station.Calibration;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Wire;

class WireCombinerTest {

  private static final int ROWS = 400;

  private static double[] flat(double depthMm) {
    double[] depth = new double[ROWS];
    Arrays.fill(depth, depthMm);
    return depth;
  }

  private static void remove(double[] wire, int from, int to) {
    Arrays.fill(wire, from, to, Double.NaN);
  }

  private static double rise(LevelSeries levels) {
    return levels.levelMm(levels.size() - 1) - levels.levelMm(0);
  }

  private static int segments(LevelSeries levels) {
    return levels.segment(levels.size() - 1) + 1;
  }

  private static Wire recalibrated(String name, int minute) {
    Instant from = Gauges.START.plusMillis(minute * Gauges.MINUTE_MS);
    return Gauges.wire(
        name, Gauges.IDEAL, new Calibration(Optional.of(from), 0.0172, 0.0172 / 2100, 1051));
  }

  @Test
  void theLevelIsTheMeanOfTheWires() {
    LevelSeries levels = Gauges.levels(flat(99), flat(100), flat(104));
    assertThat(levels.levelMm(3)).isCloseTo(101, within(1e-9));
    assertThat(levels.wireMask(3)).isEqualTo(0b111);
  }

  @Test
  void theMaskTellsTheWiresUsedAndRowsWithoutAnyAreAbsent() {
    double[] one = flat(100);
    double[] other = flat(103);
    remove(one, 100, 200);
    remove(other, 150, 160);
    LevelSeries levels = Gauges.levels(one, other);
    assertThat(levels.size()).isEqualTo(ROWS - 10);
    assertThat(levels.wireMask(99)).isEqualTo(0b11);
    assertThat(levels.wireMask(100)).isEqualTo(0b10);
    assertThat(levels.row(150)).isEqualTo(160);
    assertThat(segments(levels)).isEqualTo(1);
    assertThat(levels.levelMm(150)).isCloseTo(101.5, within(1e-9));
  }

  @Test
  void tiltThatDriftsWhileAWireIsAwayIsBridged() {
    double[][] wires = {flat(100), flat(100), flat(100)};
    for (int row = 0; row < ROWS; row++) {
      wires[0][row] += 0.002 * row;
      wires[1][row] -= 0.001 * row;
      wires[2][row] -= 0.001 * row;
    }
    remove(wires[0], 50, 350);
    LevelSeries levels = Gauges.levels(wires);
    for (int i = 0; i < ROWS; i++) {
      assertThat(levels.levelMm(i)).isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void aWireThatNeverWorkedChangesNothing() {
    double[] dead = flat(Double.NaN);
    LevelSeries levels = Gauges.levels(flat(100), dead, flat(102));
    assertThat(levels.levelMm(5)).isCloseTo(101, within(1e-9));
    assertThat(levels.wireMask(5)).isEqualTo(0b101);
  }

  @Test
  void aVisitStartsANewSegment() {
    double[] depth = flat(400);
    Arrays.fill(depth, 200, ROWS, 30);
    LevelSeries levels =
        Gauges.levels(Gauges.notebook(Gauges.visit(201, 201)), Gauges.sheet(1), depth);
    assertThat(levels.segment(199)).isZero();
    assertThat(levels.segment(200)).isEqualTo(1);
    assertThat(levels.levelMm(200)).isCloseTo(30, within(1e-9));
  }

  @Test
  void aVisitBeforeOrAfterAllReadingsCutsNothing() {
    Notebook notebook = Gauges.notebook(Gauges.visit(-20, -10), Gauges.visit(900, 910));
    assertThat(segments(Gauges.levels(notebook, Gauges.sheet(1), flat(100)))).isEqualTo(1);
  }

  @Test
  void aNewCalibrationOfOneWireSetsItBackOntoItsOldOffset() {
    StationSheet sheet =
        Gauges.sheet(
            List.of(Gauges.wire("w0", Gauges.IDEAL), recalibrated("w1", 201)),
            OptionalDouble.of(600));
    double[] one = flat(100);
    double[] other = flat(101);
    Arrays.fill(other, 200, ROWS, 101.4);
    LevelSeries levels = Gauges.levels(Notebook.EMPTY, sheet, one, other);
    assertThat(segments(levels)).isEqualTo(1);
    assertThat(rise(levels)).isCloseTo(0, within(1e-9));
  }

  @Test
  void aNewCalibrationOfEveryWireStartsANewSegment() {
    StationSheet sheet =
        Gauges.sheet(
            List.of(recalibrated("w0", 201), recalibrated("w1", 201)), OptionalDouble.of(600));
    LevelSeries levels = Gauges.levels(Notebook.EMPTY, sheet, flat(100), flat(101));
    assertThat(levels.segment(199)).isZero();
    assertThat(levels.segment(200)).isEqualTo(1);
  }

  @Test
  void calibrationsThatChangeOneAfterTheOtherKeepTheSegment() {
    StationSheet sheet =
        Gauges.sheet(
            List.of(recalibrated("w0", 201), recalibrated("w1", 202)), OptionalDouble.of(600));
    double[] one = flat(100);
    double[] other = flat(101);
    Arrays.fill(one, 200, ROWS, 97);
    Arrays.fill(other, 201, ROWS, 108);
    LevelSeries levels = Gauges.levels(Notebook.EMPTY, sheet, one, other);
    assertThat(segments(levels)).isEqualTo(1);
    assertThat(rise(levels)).isCloseTo(0, within(1e-9));
  }

  @Test
  void wiresThatTakeOverWithoutOverlapStartANewSegment() {
    double[] early = flat(100);
    double[] late = flat(130);
    remove(early, 200, ROWS);
    remove(late, 0, 200);
    LevelSeries levels = Gauges.levels(early, late);
    assertThat(levels.segment(199)).isZero();
    assertThat(levels.segment(200)).isEqualTo(1);
  }

  @Test
  void oneReadingOfAnotherWireAmongReadingsOfTheFirstCutsNothing() {
    double[] one = flat(100);
    double[] other = flat(Double.NaN);
    one[200] = Double.NaN;
    other[200] = 250;
    LevelSeries levels = Gauges.levels(one, other);
    assertThat(segments(levels)).isEqualTo(1);
    assertThat(levels.size()).isEqualTo(ROWS - 1);
    assertThat(rise(levels)).isZero();
  }

  @Test
  void wiresInRelayKeepTheSegment() {
    double[][] wires = {flat(100), flat(105), flat(97)};
    remove(wires[0], 150, ROWS);
    remove(wires[1], 0, 140);
    remove(wires[1], 300, ROWS);
    remove(wires[2], 0, 299);
    LevelSeries levels = Gauges.levels(wires);
    assertThat(segments(levels)).isEqualTo(1);
    assertThat(rise(levels)).isCloseTo(0, within(1e-9));
  }
}
