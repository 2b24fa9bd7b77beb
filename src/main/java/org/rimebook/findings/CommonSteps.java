package org.rimebook.findings;

import java.util.Arrays;
import org.rimebook.depth.Robust;
import org.rimebook.depth.Screening;
import org.rimebook.depth.WireDepths;
import org.rimebook.notebook.Entry;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Calibration;
import org.rimebook.station.Interval;

/**
 * Steps of the readings that all wires make alike, row by row: what happened to the bucket and not
 * to a wire. The step of a row is the middle one of the wires' that have a reading, each against
 * its own last reading; of an even number the smaller of the middle two, nothing when they go
 * apart. Readings out of range take part; those without a frequency, or left out by an entry,
 * don't, and neither does a step across a service visit or a new calibration.
 */
final class CommonSteps {

  /** Readings a chunk of usual steps has at least; own choice. */
  private static final int CHUNK_ROWS = 12;

  private static final long CHUNK_MS = 3_600_000;

  /** Chunks on each side that say what is usual: a visit of two hours spoils two; own choice. */
  private static final int SIDE_CHUNKS = 5;

  /** Steps looked at in a chunk; more tell no more. */
  private static final int SAMPLE = 60;

  private final SeasonRecord record;
  private final WireDepths depths;
  private final float[] stepMm;
  private final int[] fromRow;
  private final double[] usualMm;
  private final int chunkRows;

  private CommonSteps(Scene scene) {
    this.record = scene.record();
    this.depths = scene.depths();
    this.stepMm = new float[record.size()];
    this.fromRow = new int[record.size()];
    this.chunkRows = chunkRows();
    fill(scene);
    this.usualMm = usual();
  }

  static CommonSteps of(Scene scene) {
    return new CommonSteps(scene);
  }

  private int chunkRows() {
    long shortest =
        record.sampling().stream()
            .mapToLong(run -> run.intervalMs())
            .filter(ms -> ms > 0)
            .min()
            .orElse(CHUNK_MS);
    return (int) Math.max(CHUNK_ROWS, CHUNK_MS / shortest);
  }

  private void fill(Scene scene) {
    int wires = depths.wires();
    double[] last = new double[wires];
    int[] lastRow = new int[wires];
    double[] steps = new double[wires];
    double[] from = new double[wires];
    Arrays.fill(last, Double.NaN);
    boolean[] cut = cuts(scene);
    for (int row = 0; row < stepMm.length; row++) {
      int count = 0;
      for (int wire = 0; wire < wires; wire++) {
        if (cut[row]) {
          last[wire] = Double.NaN;
        }
        double depth = reading(wire, row);
        if (!Double.isNaN(depth)) {
          if (!Double.isNaN(last[wire])) {
            from[count] = lastRow[wire];
            steps[count++] = depth - last[wire];
          }
          last[wire] = depth;
          lastRow[wire] = row;
        }
      }
      stepMm[row] = count < 2 ? Float.NaN : (float) middle(steps, count);
      fromRow[row] = count < 2 ? row - 1 : (int) later(from, count);
    }
  }

  /** Depth a wire shows, in its range or not [mm]; NaN when it says nothing. */
  double reading(int wire, int row) {
    Screening why = depths.screening(wire, row);
    boolean leftOut = why == Screening.SERVICE_VISIT || why == Screening.BAD_INTERVAL;
    // A frequency of 0 is a reading that failed.
    return leftOut || !(record.frequency(wire).get(row) > 0)
        ? Double.NaN
        : depths.depthMm(wire, row);
  }

  /** Rows whose level doesn't compare with that before, whatever the wires say. */
  private boolean[] cuts(Scene scene) {
    boolean[] cut = new boolean[record.size()];
    for (Interval visit : scene.spans(Entry.ServiceVisit.class)) {
      cut(cut, visit.toMs());
    }
    scene.sheet().wires().stream()
        .flatMap(wire -> wire.calibrations().stream())
        .map(Calibration::from)
        .flatMap(from -> from.stream())
        .forEach(from -> cut(cut, from.toEpochMilli()));
    return cut;
  }

  private void cut(boolean[] cut, long atMs) {
    int row = record.firstRowAtOrAfter(atMs);
    if (row < cut.length) {
      cut[row] = true;
    }
  }

  private static double middle(double[] steps, int count) {
    if (count == 2) {
      return nearerZero(steps[0], steps[1]);
    }
    if (count == 3) {
      double least = Math.min(steps[0], steps[1]);
      double most = Math.max(steps[0], steps[1]);
      return Math.max(least, Math.min(most, steps[2]));
    }
    Arrays.sort(steps, 0, count);
    int half = count / 2;
    return count % 2 == 1 ? steps[half] : nearerZero(steps[half - 1], steps[half]);
  }

  /** The later of the middle two, or the middle one. */
  private static double later(double[] rows, int count) {
    if (count == 2) {
      return Math.max(rows[0], rows[1]);
    }
    Arrays.sort(rows, 0, count);
    return rows[count / 2];
  }

  private static double nearerZero(double one, double other) {
    if (one * other <= 0) {
      return 0;
    }
    return Math.abs(one) < Math.abs(other) ? one : other;
  }

  private double[] usual() {
    double[] usual = new double[stepMm.length / chunkRows + 1];
    double[] sizes = new double[SAMPLE + 1];
    int stride = Math.max(1, (chunkRows + SAMPLE - 1) / SAMPLE);
    for (int chunk = 0; chunk < usual.length; chunk++) {
      int count = 0;
      int end = Math.min(stepMm.length, (chunk + 1) * chunkRows);
      for (int row = chunk * chunkRows; row < end; row += stride) {
        if (!Float.isNaN(stepMm[row])) {
          sizes[count++] = Math.abs(stepMm[row]);
        }
      }
      usual[chunk] = count < 2 ? Double.NaN : Robust.sdFromMagnitudesInPlace(sizes, count);
    }
    return usual;
  }

  /** Wires. */
  int wires() {
    return depths.wires();
  }

  /** Rows. */
  int size() {
    return stepMm.length;
  }

  /** Common step from the reading before [mm]; NaN where fewer than two wires tell. */
  double stepMm(int row) {
    return stepMm[row];
  }

  /** Time since the readings a row's step is counted from [ms]; 0 at the first row. */
  long sinceMs(int row) {
    return row == 0 ? 0 : record.stampMs(row) - record.stampMs(fromRow[row]);
  }

  /**
   * Standard deviation of common steps about a row as they were before or after it, whichever is
   * larger [mm]; NaN when neither is known.
   */
  double usualStepMm(int row) {
    int chunk = row / chunkRows;
    double before = median(chunk - SIDE_CHUNKS, chunk);
    double after = median(chunk + 1, chunk + 1 + SIDE_CHUNKS);
    if (Double.isNaN(before) || Double.isNaN(after)) {
      return Double.isNaN(before) ? after : before;
    }
    return Math.max(before, after);
  }

  private double median(int from, int to) {
    double[] values =
        Arrays.stream(usualMm, Math.max(0, from), Math.max(0, Math.min(usualMm.length, to)))
            .filter(Double::isFinite)
            .toArray();
    return values.length == 0 ? Double.NaN : Robust.medianInPlace(values, values.length);
  }
}
