package org.rimebook.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.station.Calibration;
import org.rimebook.station.Interval;

/**
 * The difference of two wires night by night, with what else moves it: a constant for each stretch
 * between visits, calibrations and marked shifts, the load (tilt, calibration), load times
 * temperature, and how much the wires moved in the sun.
 */
final class PairNights {

  /** Fewer nights tell nothing; own choice. */
  static final int LEAST_NIGHTS = 21;

  /** A stretch between visits with fewer nights is left out; own choice. */
  private static final int LEAST_STRETCH = 5;

  /** Level lost from one night to the next when somebody was there [mm]; own choice. */
  private static final double EMPTIED_MM = 10;

  /** Level gained likewise: more than falls in a day [mm]; own choice. */
  private static final double CHARGED_MM = 150;

  /** No difference is known better [mm]; own choice. */
  private static final double LEAST_NOISE_MM = 0.01;

  /**
   * A load that changes less explains nothing [mm]: tilt of a hundredth makes 0.1 mm of it, and a
   * creep of the two wires would pass for load.
   */
  private static final double LEAST_LOAD_MM = 10;

  /** Likewise for temperature [°C], which moves a wire by 0.004 % of its load a degree. */
  private static final double LEAST_DEG_C = 3;

  private static final double OUTLIER_SD = 8;
  private static final int NEIGHBOURS = 3;
  private static final int LAG = 3;

  private final int[] night;
  private final double[] mm;
  private double noiseMm;
  private final List<double[]> basis = new ArrayList<>();

  private PairNights(int[] night, double[] mm) {
    this.night = night;
    this.mm = mm;
  }

  /** The nights of a pair; few or none when they were seldom both in use. */
  static PairNights of(Scene scene, Nights nights, int one, int other) {
    int[] seen =
        IntStream.range(0, nights.count())
            .filter(n -> Double.isFinite(nights.differenceMm(one, other, n)))
            .filter(n -> !doubted(scene, one, nights.startMs(n)))
            .filter(n -> !doubted(scene, other, nights.startMs(n)))
            .toArray();
    double[] all =
        Arrays.stream(seen).mapToDouble(n -> nights.differenceMm(one, other, n)).toArray();
    int[] plain = IntStream.range(0, seen.length).filter(i -> !outlier(all, i)).toArray();
    int[] kept = Arrays.stream(plain).map(i -> seen[i]).toArray();
    int[] stretch = stretches(scene, nights, kept, new int[] {one, other});
    int[] size = new int[kept.length + 1];
    Arrays.stream(stretch).forEach(s -> size[s]++);
    int[] in =
        IntStream.range(0, kept.length).filter(i -> size[stretch[i]] >= LEAST_STRETCH).toArray();
    PairNights pair =
        new PairNights(
            Arrays.stream(in).map(i -> kept[i]).toArray(),
            Arrays.stream(in).mapToDouble(i -> all[plain[i]]).toArray());
    for (int s : Arrays.stream(in).map(i -> stretch[i]).distinct().toArray()) {
      pair.explain(i -> stretch[in[i]] == s ? 1 : 0);
    }
    if (pair.range(i -> nights.depthMm(one, other, pair.night[i])) >= LEAST_LOAD_MM) {
      pair.explain(i -> nights.depthMm(one, other, pair.night[i]));
    }
    boolean warm =
        Arrays.stream(pair.night).mapToDouble(nights::temperatureC).allMatch(Double::isFinite);
    if (warm && pair.range(i -> nights.temperatureC(pair.night[i])) >= LEAST_DEG_C) {
      pair.explain(
          i -> nights.depthMm(one, other, pair.night[i]) * nights.temperatureC(pair.night[i]));
    }
    pair.explain(i -> nights.noonMm(one, other, pair.night[i]));
    pair.judgeNoise();
    return pair;
  }

  /**
   * A night apart from those around it, which neither goes on from the two before nor leads to the
   * two after, so that the ends of a creep are kept.
   */
  private static boolean outlier(double[] mm, int at) {
    int from = Math.max(0, at - NEIGHBOURS);
    int to = Math.min(mm.length, at + NEIGHBOURS + 1);
    double[] near = Arrays.copyOfRange(mm, from, to);
    double off = Math.abs(mm[at] - Robust.medianInPlace(near, near.length));
    double limitMm = OUTLIER_SD * noise(mm);
    return mm.length > 2 * NEIGHBOURS
        && off > limitMm
        && !follows(mm, at, -1, limitMm)
        && !follows(mm, at, 1, limitMm);
  }

  private static boolean follows(double[] mm, int at, int step, double limitMm) {
    int far = at + 2 * step;
    return far >= 0 && far < mm.length && Math.abs(mm[at] - 2 * mm[at + step] + mm[far]) <= limitMm;
  }

  /**
   * From second differences of nights three apart: weather lasts a day or two, and a creep that
   * goes on for half a season is no noise.
   */
  private static double noise(double[] mm) {
    double[] bends =
        IntStream.range(0, Math.max(0, mm.length - 2 * LAG))
            .mapToDouble(i -> Math.abs(mm[i] - 2 * mm[i + LAG] + mm[i + 2 * LAG]))
            .toArray();
    return bends.length == 0
        ? Double.NaN
        : Robust.sdFromMagnitudesInPlace(bends, bends.length) / Math.sqrt(6);
  }

  private static int[] stretches(Scene scene, Nights nights, int[] kept, int[] wires) {
    int[] stretch = new int[kept.length];
    for (int i = 1; i < kept.length; i++) {
      double gained =
          nights.depthMm(wires[0], wires[1], kept[i])
              - nights.depthMm(wires[0], wires[1], kept[i - 1]);
      long fromMs = nights.startMs(kept[i - 1]);
      long toMs = nights.startMs(kept[i]);
      boolean cut =
          gained < -EMPTIED_MM
              || gained > CHARGED_MM
              || nights.segment(kept[i]) != nights.segment(kept[i - 1])
              || Arrays.stream(wires).anyMatch(wire -> begunAnew(scene, wire, fromMs, toMs));
      stretch[i] = stretch[i - 1] + (cut ? 1 : 0);
    }
    return stretch;
  }

  private static boolean begunAnew(Scene scene, int wire, long fromMs, long toMs) {
    return WireSpans.shifted(scene, wire, new Interval(fromMs, toMs + Nights.DAY_MS / 4))
        || calibrated(scene, wire, fromMs, toMs);
  }

  /** What wires show by a calibration that isn't theirs tells nothing of creeping. */
  private static boolean doubted(Scene scene, int wire, long midnightMs) {
    Interval night = new Interval(midnightMs, midnightMs + Nights.DAY_MS / 4);
    return WireSpans.calibrationDoubted(scene, wire, night);
  }

  private static boolean calibrated(Scene scene, int wire, long fromMs, long toMs) {
    return scene.sheet().wires().get(wire).calibrations().stream()
        .map(Calibration::from)
        .flatMap(Optional::stream)
        .anyMatch(from -> from.toEpochMilli() > fromMs && from.toEpochMilli() <= toMs);
  }

  private double range(IntToDoubleFunction column) {
    double[] values = IntStream.range(0, mm.length).mapToDouble(column).toArray();
    return Arrays.stream(values).max().orElse(0) - Arrays.stream(values).min().orElse(0);
  }

  /** Takes what goes with a column out of the differences. */
  void explain(IntToDoubleFunction column) {
    double[] rest = free(column);
    double length = Math.sqrt(dot(rest, rest));
    double whole =
        Math.sqrt(IntStream.range(0, mm.length).mapToDouble(column).map(v -> v * v).sum());
    if (length <= 1e-6 * whole) {
      return;
    }
    for (int i = 0; i < rest.length; i++) {
      rest[i] /= length;
    }
    basis.add(rest);
    double share = dot(rest, mm);
    for (int i = 0; i < mm.length; i++) {
      mm[i] -= share * rest[i];
    }
  }

  /** Judges the noise anew by what is left of the differences. */
  void judgeNoise() {
    noiseMm = Math.max(LEAST_NOISE_MM, noise(mm));
  }

  /** A column less what goes with the columns before. */
  private double[] free(IntToDoubleFunction column) {
    double[] rest = new double[mm.length];
    Arrays.setAll(rest, column::applyAsDouble);
    for (double[] unit : basis) {
      double share = dot(unit, rest);
      for (int i = 0; i < rest.length; i++) {
        rest[i] -= share * unit[i];
      }
    }
    return rest;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /**
   * How well a column suits what is left of the differences.
   *
   * @param size how much of it there is, in its own unit
   * @param sd the same in standard errors of independent nights
   */
  record Suits(double size, double sd) {}

  Suits suits(IntToDoubleFunction column) {
    double[] rest = free(column);
    double square = dot(rest, rest);
    double with = dot(rest, mm);
    return square < 1e-9
        ? new Suits(0, 0)
        : new Suits(with / square, Math.abs(with) / Math.sqrt(square) / noiseMm);
  }

  int size() {
    return night.length;
  }

  int night(int index) {
    return night[index];
  }

  /** Noise of a night [mm]. */
  double noiseMm() {
    return noiseMm;
  }

  /** The nights, in order. */
  int[] nights() {
    return night.clone();
  }
}
