package org.rimebook.findings;

import java.util.Arrays;
import java.util.Optional;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.depth.Robust;
import org.rimebook.depth.Screening;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/**
 * Frequencies of all wires at the same moments, hour by hour: the median of a few rows in which
 * every wire that isn't left out has a reading. Frequencies rather than depths, so that they can be
 * tried on other calibrations; readings that give an impossible depth are taken too, since a wrong
 * calibration does that.
 */
final class SharedHours {

  /** Rows an hour's median is taken from at most; own choice. */
  private static final int MOST_ROWS = 15;

  private static final long HOUR_MS = 3_600_000;

  private final Scene scene;
  private final int[] firstBlock;
  private final double[][] hertz;

  private SharedHours(Scene scene, int[] firstBlock) {
    this.scene = scene;
    this.firstBlock = firstBlock;
    this.hertz = new double[scene.depths().wires()][firstBlock.length - 1];
  }

  static SharedHours of(Scene scene) {
    Blocks blocks = scene.blocks();
    int each = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    int size = (blocks.size() + each - 1) / each;
    int[] first = new int[size + 1];
    Arrays.setAll(first, i -> Math.min(blocks.size(), i * each));
    SharedHours hours = new SharedHours(scene, first);
    for (int hour = 0; hour < size; hour++) {
      hours.fill(hour);
    }
    return hours;
  }

  private void fill(int hour) {
    int from = scene.blocks().firstRow(firstBlock[hour]);
    int to = scene.blocks().firstRow(firstBlock[hour + 1]);
    int step = Math.max(1, (to - from) / MOST_ROWS);
    double[][] values = new double[hertz.length][(to - from) / step + 1];
    int count = 0;
    for (int row = from; row < to; row += step) {
      if (whole(row)) {
        for (int wire = 0; wire < hertz.length; wire++) {
          values[wire][count] = hertz(wire, row);
        }
        count++;
      }
    }
    for (int wire = 0; wire < hertz.length; wire++) {
      hertz[wire][hour] = count == 0 ? Double.NaN : Robust.medianInPlace(values[wire], count);
    }
  }

  /** Whether every wire has a reading in a row that nobody left out. */
  boolean whole(int row) {
    boolean whole = true;
    for (int wire = 0; wire < hertz.length; wire++) {
      Screening screening = scene.depths().screening(wire, row);
      whole &= screening == Screening.USED || screening == Screening.OUT_OF_RANGE;
    }
    return whole;
  }

  /** Frequency of a wire in a row [Hz]. */
  double hertz(int wire, int row) {
    return scene.record().frequency(wire).get(row) * scene.sheet().layout().hertzPerUnit();
  }

  /** Hours, or blocks where those are longer. */
  int size() {
    return firstBlock.length - 1;
  }

  /** Wires. */
  int wires() {
    return hertz.length;
  }

  /** Whether all wires have readings in an hour. */
  boolean known(int hour) {
    return hertz.length > 0 && Double.isFinite(hertz[0][hour]);
  }

  /** Start of an hour [ms since epoch]; that of the hour after the last too. */
  long startMs(int hour) {
    return scene.blocks().startMs(firstBlock[hour]);
  }

  /** First row of an hour; rows go up to that of the next. */
  int firstRow(int hour) {
    return scene.blocks().firstRow(firstBlock[hour]);
  }

  /** Depth [mm] that a wire's frequency has on the calibration of a wire, its own or another's. */
  double depthMm(int wire, int calibrated, int hour) {
    return curve(calibrated, startMs(hour)).depthMm(hertz[wire][hour]);
  }

  /** Depth of a wire [mm]. */
  double depthMm(int wire, int hour) {
    return depthMm(wire, wire, hour);
  }

  /** The calibration of a wire in force at an instant. */
  CalibrationCurve curve(int wire, long epochMs) {
    return CalibrationCurve.of(scene.sheet().wires().get(wire).calibrationAt(epochMs));
  }

  /** The time from the first reading's interval to the last reading, which is inside. */
  static Optional<Interval> season(Scene scene) {
    SeasonRecord record = scene.record();
    if (record.size() == 0 || record.sampling().isEmpty()) {
      return Optional.empty();
    }
    long first = record.sampling().get(0).intervalMs();
    long last = record.sampling().get(record.sampling().size() - 1).intervalMs();
    return Optional.of(
        new Interval(record.stampMs(0) - first, record.stampMs(record.size() - 1) + last));
  }
}
