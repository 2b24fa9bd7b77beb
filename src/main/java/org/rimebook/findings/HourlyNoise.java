package org.rimebook.findings;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.station.Interval;

/**
 * Noise of the wires hour by hour, and beside each other. Nothing is told of readings further apart
 * than ten minutes, between which the level itself moves.
 */
final class HourlyNoise {

  /** Share of a wire's usual noise below which noises aren't told apart; own choice. */
  private static final double FLOOR = 0.5;

  /** Share of normal values more than a standard deviation below their mean. */
  private static final double ONE_SD = 0.159;

  private static final double OF_MEDIAN = 1.25;
  private static final double MOST_INDEPENDENT = 10;

  private static final long HOUR_MS = 3_600_000;
  private static final long LONGEST_APART_MS = 600_000;

  /** Readings in a block whose noise is known; differences in an hour that tell; own choice. */
  private static final int LEAST_READINGS = 5;

  private static final int LEAST_DIFFERENCES = 4;

  private final Scene scene;
  private final Blocks blocks;
  private final boolean dense;
  private final boolean tells;
  private final int perHour;
  private final double[][] mm;
  private final double[][] ratio;

  /**
   * What a wire is like for a while.
   *
   * @param ownMm its noise [mm]
   * @param othersMm that of the others [mm]
   * @param times ratio of both, to what it usually is
   */
  record Noise(double ownMm, double othersMm, double times) {}

  HourlyNoise(Scene scene) {
    this.scene = scene;
    this.blocks = scene.blocks();
    long apartMs = Pace.of(scene.record()).intervalMs();
    this.dense = apartMs * LEAST_READINGS <= blocks.lengthMs();
    this.tells = apartMs <= LONGEST_APART_MS;
    this.perHour = (int) Math.max(1, HOUR_MS / blocks.lengthMs());
    int wires = scene.depths().wires();
    this.mm = new double[wires][blocks.size() / perHour];
    for (int wire = 0; wire < wires; wire++) {
      int one = wire;
      Arrays.setAll(mm[wire], hour -> hourMm(one, hour));
      countMarked(wire);
    }
    this.ratio = new double[wires][];
    for (int wire = 0; wire < wires; wire++) {
      ratio[wire] = ratios(wire);
    }
  }

  private double hourMm(int wire, int hour) {
    if (!tells) {
      return Double.NaN;
    }
    double mm = dense ? fromBlocks(wire, hour) : Double.NaN;
    return Double.isNaN(mm) ? fromReadings(wire, hour) : mm;
  }

  /** What is left out as noise tells what is usual all the same, else what remains looks noisy. */
  private void countMarked(int wire) {
    MarkedNoise marked = MarkedNoise.of(scene, wire);
    for (int hour = 0; tells && hour < mm[wire].length; hour++) {
      if (marked.in(span(hour, hour + 1))) {
        mm[wire][hour] = markedMm(marked, hour);
      }
    }
  }

  private double markedMm(MarkedNoise marked, int hour) {
    int first = hour * perHour;
    return dense
        ? middle(hour, block -> noiseMm(marked, block, block + 1))
        : noiseMm(marked, first, first + perHour);
  }

  private double noiseMm(MarkedNoise marked, int fromBlock, int toBlock) {
    return marked.noiseMm(blocks.firstRow(fromBlock), blocks.firstRow(toBlock), LEAST_DIFFERENCES);
  }

  private double fromReadings(int wire, int hour) {
    double[] steps = steps(wire, hour);
    if (steps.length < LEAST_DIFFERENCES) {
      return Double.NaN;
    }
    Arrays.setAll(steps, i -> Math.abs(steps[i]));
    return Robust.sdFromMagnitudesInPlace(steps, steps.length) / Math.sqrt(2);
  }

  /** Differences of readings that follow each other in an hour [mm]. */
  private double[] steps(int wire, int hour) {
    int toRow = blocks.firstRow((hour + 1) * perHour);
    int fromRow = blocks.firstRow(hour * perHour);
    double[] steps = new double[toRow - fromRow];
    int count = 0;
    double before = Double.NaN;
    for (int row = fromRow; row < toRow; row++) {
      double mm = scene.depths().used(wire, row) ? scene.depths().depthMm(wire, row) : Double.NaN;
      if (Double.isFinite(mm - before)) {
        steps[count++] = mm - before;
      }
      before = mm;
    }
    return Arrays.copyOf(steps, count);
  }

  private double fromBlocks(int wire, int hour) {
    return middle(hour, block -> blocks.noiseMm(wire, block));
  }

  private double middle(int hour, IntToDoubleFunction blockMm) {
    double[] known = new double[perHour];
    int count = 0;
    for (int block = hour * perHour; block < (hour + 1) * perHour; block++) {
      double each = blockMm.applyAsDouble(block);
      if (Double.isFinite(each)) {
        known[count++] = each;
      }
    }
    return 2 * count < perHour ? Double.NaN : Robust.medianInPlace(known, count);
  }

  /** Logarithm of the ratio to the noisiest other wire. */
  private double[] ratios(int wire) {
    double floorMm = FLOOR * median(mm[wire]);
    double[] ratios = new double[mm[wire].length];
    for (int hour = 0; hour < ratios.length; hour++) {
      double others = Double.NaN;
      for (int other = 0; other < mm.length; other++) {
        if (other != wire && Double.isFinite(mm[other][hour])) {
          others = Double.isNaN(others) ? mm[other][hour] : Math.max(others, mm[other][hour]);
        }
      }
      ratios[hour] =
          StrictMath.log(Math.hypot(mm[wire][hour], floorMm))
              - StrictMath.log(Math.hypot(others, floorMm));
    }
    return ratios;
  }

  private static double median(double[] values) {
    double[] known = Arrays.stream(values).filter(Double::isFinite).toArray();
    return known.length == 0 ? Double.NaN : Robust.medianInPlace(known, known.length);
  }

  /** Wires. */
  int wires() {
    return mm.length;
  }

  /** Hours. */
  int hours() {
    return blocks.size() / perHour;
  }

  /** Length of an hour, or of a block when that is longer [ms]. */
  long lengthMs() {
    return perHour * blocks.lengthMs();
  }

  /**
   * Noise of a wire's reading in some hours by how far readings fall from one to the next, which
   * precipitation never does: one standard deviation of normal noise is exceeded downwards by 16 %
   * of them [mm]; NaN when there are no readings.
   */
  double fallingMm(int wire, IntStream chosen) {
    double[] steps =
        chosen
            .mapToObj(hour -> steps(wire, hour))
            .flatMapToDouble(Arrays::stream)
            .sorted()
            .toArray();
    return steps.length == 0 ? Double.NaN : -steps[(int) (ONE_SD * steps.length)] / Math.sqrt(2);
  }

  /**
   * Usual change of a wire's median from one block to the next by what its readings scatter by in
   * the hour [mm]; NaN when that isn't known. A median of independent readings is 1.25 times as
   * noisy as their mean; readings nearer than a minute aren't independent (own choice). Of readings
   * far apart only their falls tell noise from rain.
   */
  double changeMm(int wire, int block) {
    int used = blocks.used(wire, block);
    double independent = Math.max(1, Math.min(MOST_INDEPENDENT, used));
    double median = used > 2 ? OF_MEDIAN : 1;
    int hour = hourOf(block);
    double own = dense ? mm[wire][hour] : Math.max(0, fallingMm(wire, IntStream.of(hour)));
    return median * own * Math.sqrt(2 / independent);
  }

  /** Noise of a wire's reading in an hour [mm]; NaN when it isn't known. */
  double mm(int wire, int hour) {
    return mm[wire][hour];
  }

  /** The hour of a block, or the last one. */
  int hourOf(int block) {
    return Math.min(hours() - 1, block / perHour);
  }

  /** Logarithm of the ratio to the others, less what is usual; by hour. */
  double[] excess(int wire) {
    double usual = median(ratio[wire]);
    return Arrays.stream(ratio[wire]).map(value -> value - usual).toArray();
  }

  Interval span(int fromHour, int toHour) {
    return blocks.span(fromHour * perHour, toHour * perHour);
  }

  Noise of(int wire, JoinedRuns.Run run) {
    double[] others = new double[run.length()];
    for (int i = 0; i < others.length; i++) {
      double most = Double.NaN;
      for (int other = 0; other < mm.length; other++) {
        double each = mm[other][run.fromRow() + i];
        if (other != wire && Double.isFinite(each)) {
          most = Double.isNaN(most) ? each : Math.max(most, each);
        }
      }
      others[i] = most;
    }
    double times =
        StrictMath.exp(
            median(Arrays.copyOfRange(ratio[wire], run.fromRow(), run.toRow()))
                - median(ratio[wire]));
    return new Noise(
        median(Arrays.copyOfRange(mm[wire], run.fromRow(), run.toRow())), median(others), times);
  }
}
