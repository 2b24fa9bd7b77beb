package org.rimebook.depth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Calibration;
import org.rimebook.station.Progress;
import org.rimebook.station.StationSheet;

class WireDepthStageTest {

  private static final int ROWS = 120;

  private static double[] flat(double depthMm) {
    double[] depth = new double[ROWS];
    Arrays.fill(depth, depthMm);
    return depth;
  }

  private static WireDepths depths(SeasonRecord record, StationSheet sheet, Notebook notebook) {
    ConvertedWires converted = ConvertedWires.of(record, sheet, Progress.NONE);
    return WireDepthStage.of(converted, notebook, Progress.NONE);
  }

  private static WireDepths stage(SeasonRecord record, StationSheet sheet, Entry... entries) {
    return depths(record, sheet, Gauges.notebook(entries));
  }

  private static WireDepths minutes(Notebook notebook, double[]... depthMm) {
    SeasonRecord record = Gauges.record(Gauges.MINUTE_MS, depthMm);
    return depths(record, Gauges.sheet(depthMm.length), notebook);
  }

  /** Rows (stamped row + 1 minutes after the start) with a reason. */
  private static int[] rowsWith(Screening reason, WireDepths depths, int wire) {
    int[] rows = new int[depths.size()];
    int size = 0;
    for (int row = 0; row < depths.size(); row++) {
      if (depths.screening(wire, row) == reason) {
        rows[size++] = row;
      }
    }
    return Arrays.copyOf(rows, size);
  }

  @Test
  void aFrequencyComesBackAsTheDepthItStoodFor() {
    WireDepths depths = minutes(Notebook.EMPTY, flat(123.4), flat(0));
    assertThat(depths.depthMm(0, 7)).isCloseTo(123.4, within(1e-9));
    assertThat(depths.depthMm(1, 7)).isCloseTo(0, within(1e-9));
    assertThat(depths.used(0, 7)).isTrue();
    assertThat(depths.screening(0, 7).code()).isEmpty();
  }

  @Test
  void countsOverAGateAreHertz() {
    long[] stamps = {60_000, 120_000};
    StationSheet hertz = Gauges.sheet(1);
    StationSheet counts = Gauges.sheet(hertz.wires(), OptionalDouble.of(600), OptionalDouble.of(4));
    WireDepths a = stage(Gauges.recordOf(stamps, 60_000, new double[] {1500, 1501}), hertz);
    WireDepths b = stage(Gauges.recordOf(stamps, 60_000, new double[] {6000, 6004}), counts);
    assertThat(b.depthMm(0, 0)).isEqualTo(a.depthMm(0, 0));
    assertThat(b.depthMm(0, 1)).isEqualTo(a.depthMm(0, 1));
  }

  @Test
  void aCalibrationHoldsFromItsStampOn() {
    Instant from = Gauges.START.plusMillis(30 * Gauges.MINUTE_MS);
    Calibration doubled = new Calibration(Optional.of(from), 0.0344, 0.0344 / 2100, 1050);
    StationSheet sheet =
        Gauges.sheet(List.of(Gauges.wire("w0", Gauges.IDEAL, doubled)), OptionalDouble.of(600));
    WireDepths depths = stage(Gauges.record(Gauges.MINUTE_MS, flat(100)), sheet);
    // Row 29 is stamped 30 minutes after the start.
    assertThat(depths.depthMm(0, 28)).isCloseTo(100, within(1e-9));
    assertThat(depths.depthMm(0, 29)).isCloseTo(200, within(1e-9));
    assertThat(rowsWith(Screening.USED, depths, 0)).hasSize(ROWS);
  }

  @Test
  void aMissingReadingStaysMissingWhateverCoversIt() {
    double[] depth = flat(100);
    depth[20] = Double.NaN;
    WireDepths depths = minutes(Gauges.notebook(Gauges.visit(15, 30)), depth);
    assertThat(depths.screening(0, 20)).isEqualTo(Screening.MISSING);
    assertThat(depths.depthMm(0, 20)).isNaN();
  }

  @Test
  void aVisitLeavesOutTheReadingsStampedInsideItForAllWires() {
    WireDepths depths = minutes(Gauges.notebook(Gauges.visit(10, 13)), flat(100), flat(100));
    assertThat(rowsWith(Screening.SERVICE_VISIT, depths, 0)).containsExactly(9, 10, 11);
    assertThat(rowsWith(Screening.SERVICE_VISIT, depths, 1)).containsExactly(9, 10, 11);
  }

  @Test
  void aBadIntervalLeavesOutItsWiresAndAllWhenItNamesNone() {
    Notebook named = Gauges.notebook(Gauges.bad(10, 12, "w1"));
    WireDepths depths = minutes(named, flat(100), flat(100));
    assertThat(rowsWith(Screening.BAD_INTERVAL, depths, 0)).isEmpty();
    assertThat(rowsWith(Screening.BAD_INTERVAL, depths, 1)).containsExactly(9, 10);
    WireDepths all = minutes(Gauges.notebook(Gauges.bad(10, 12)), flat(100), flat(100));
    assertThat(rowsWith(Screening.BAD_INTERVAL, all, 0)).containsExactly(9, 10);
    assertThat(rowsWith(Screening.BAD_INTERVAL, all, 1)).containsExactly(9, 10);
  }

  @Test
  void anUnknownWireInABadIntervalIsNotedAndChangesNothing() {
    WireDepths depths = minutes(Gauges.notebook(Gauges.bad(10, 12, "nroth")), flat(100));
    assertThat(rowsWith(Screening.USED, depths, 0)).hasSize(ROWS);
    assertThat(depths.notes()).singleElement().asString().contains("nroth").contains("e1");
  }

  @Test
  void theReasonDoesNotDependOnTheOrderOfEntries() {
    Entry visit = Gauges.visit(10, 20);
    Entry bad = Gauges.bad(15, 30);
    WireDepths one = minutes(Gauges.notebook(visit, bad), flat(100));
    WireDepths other = minutes(Gauges.notebook(bad, visit), flat(100));
    for (int row = 0; row < ROWS; row++) {
      assertThat(one.screening(0, row)).isEqualTo(other.screening(0, row));
    }
  }

  @Test
  void depthsBelowMinusTenMillimetresAndAboveTheCapacityAreOutOfRange() {
    double[] depth = flat(300);
    depth[10] = -10.1;
    depth[20] = -9.9;
    depth[30] = 660.1;
    WireDepths depths = minutes(Notebook.EMPTY, depth);
    assertThat(rowsWith(Screening.OUT_OF_RANGE, depths, 0)).containsExactly(10, 30);
    assertThat(rowsWith(Screening.SPIKE, depths, 0)).containsExactly(20);
  }

  @Test
  void aFrequencyBelowTheTurningPointIsOutOfRangeThoughItsDepthLooksSound() {
    // Below its turning point the parabola rises again, so a dead wire can seem to hold water.
    long[] stamps = {60_000, 120_000};
    CalibrationCurve curve = CalibrationCurve.of(Gauges.IDEAL);
    double mirrored = curve.turningHz() - (curve.frequencyHz(200) - curve.turningHz());
    SeasonRecord record = Gauges.recordOf(stamps, 60_000, new double[] {mirrored, 1500});
    WireDepths depths = stage(record, Gauges.sheet(1));
    assertThat(depths.depthMm(0, 0)).isCloseTo(200, within(1e-9));
    assertThat(depths.screening(0, 0)).isEqualTo(Screening.OUT_OF_RANGE);
    assertThat(depths.used(0, 1)).isTrue();
  }

  @Test
  void withoutACapacityTheLargestUsualBucketBoundsTheDepth() {
    StationSheet sheet = Gauges.sheet(Gauges.sheet(1).wires(), OptionalDouble.empty());
    WireDepths high = stage(Gauges.record(Gauges.MINUTE_MS, flat(1640)), sheet);
    WireDepths higher = stage(Gauges.record(Gauges.MINUTE_MS, flat(1660)), sheet);
    assertThat(high.used(0, 5)).isTrue();
    assertThat(higher.screening(0, 5)).isEqualTo(Screening.OUT_OF_RANGE);
  }

  @Test
  void spikesAreFoundAtHourlySamplingToo() {
    double[] depth = new double[ROWS];
    for (int row = 0; row < ROWS; row++) {
      depth[row] = 100 + 0.2 * Math.sin(2 * Math.PI * row / 24) + (row > 60 ? 8 : 0);
    }
    depth[30] -= 6;
    WireDepths depths = stage(Gauges.record(60 * Gauges.MINUTE_MS, depth), Gauges.sheet(1));
    assertThat(rowsWith(Screening.SPIKE, depths, 0)).containsExactly(30);
  }

  @Test
  void readingsOnBothSidesOfALongGapAreNotCompared() {
    double[] depth = flat(100);
    depth[60] = 140;
    for (int row = 50; row < 60; row++) {
      depth[row] = Double.NaN;
    }
    WireDepths depths = minutes(Notebook.EMPTY, depth);
    assertThat(rowsWith(Screening.SPIKE, depths, 0)).isEmpty();
    depth[52] = 100;
    depth[56] = 100;
    assertThat(rowsWith(Screening.SPIKE, minutes(Notebook.EMPTY, depth), 0)).containsExactly(60);
  }

  @Test
  void readingsOnBothSidesOfAVisitAreNotCompared() {
    double[] depth = flat(100);
    depth[60] = 140;
    WireDepths depths = minutes(Gauges.notebook(Gauges.visit(59, 61)), depth);
    assertThat(rowsWith(Screening.SPIKE, depths, 0)).isEmpty();
  }

  @Test
  void oneStepOfACoarseFrequencyIsNotASpike() {
    long[] stamps = new long[ROWS];
    double[] hertz = new double[ROWS];
    for (int row = 0; row < ROWS; row++) {
      stamps[row] = (row + 1) * 60_000L;
      hertz[row] = 2000 + (row % 40 == 20 ? 1 : 0);
    }
    // A step of 1 Hz is 0.33 mm here, more than the floor in millimetres.
    WireDepths depths = stage(Gauges.recordOf(stamps, 60_000, hertz), Gauges.sheet(1));
    assertThat(rowsWith(Screening.SPIKE, depths, 0)).isEmpty();
  }

  @Test
  void anEmptyRecordHasNoDepths() {
    SeasonRecord empty = Gauges.recordOf(new long[0], 60_000, new double[0]);
    WireDepths depths = stage(empty, Gauges.sheet(1));
    assertThat(depths.size()).isZero();
    ConvertedWires converted = ConvertedWires.of(empty, Gauges.sheet(1), Progress.NONE);
    assertThat(WireCombiner.combine(converted, depths, Notebook.EMPTY, Progress.NONE).size())
        .isZero();
  }
}
