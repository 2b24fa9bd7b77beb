package org.rimebook.findings;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.rimebook.depth.Robust;
import org.rimebook.station.Interval;
import org.rimebook.station.Words;

/** A stretch of time in which another order of the calibrations suits the wires. */
final class ExchangedStretch {

  /** The sheet's order has to be worse by this factor, and beyond the usual by this; own choice. */
  private static final double WORSE = 3;

  private static final double UNUSUAL = 2;

  /** Slopes tell something when the load spans this much [mm]; own choice. */
  private static final double LEAST_RANGE_MM = 30;

  /** Slopes of sound wires lie this near 1; own choice. */
  private static final double SOUND_SLOPE = 0.05;

  private final Scene scene;
  private final SharedHours hours;
  private final WireOrders orders;
  private final WireOrders.Run run;
  private final int[] known;

  ExchangedStretch(Scene scene, SharedHours hours, WireOrders orders, WireOrders.Run run) {
    this.scene = scene;
    this.hours = hours;
    this.orders = orders;
    this.run = run;
    this.known = IntStream.range(run.from(), run.to()).filter(hours::known).toArray();
  }

  /** Hours in which all wires have readings. */
  int known() {
    return known.length;
  }

  /** Wire w has the calibration of wire {@code order()[w]}. */
  int[] order() {
    return orders.order(run.number());
  }

  /**
   * What speaks for the other order.
   *
   * @param words with numbers
   * @param strength how sure
   */
  record Evidence(String words, double strength) {}

  /** Empty when depths and slopes don't both speak for the other order. */
  Optional<Evidence> evidence() {
    double sheetMm = median(hour -> orders.spreadMm(0, hour));
    double otherMm = median(hour -> orders.spreadMm(run.number(), hour));
    double usualMm = median(hour -> orders.usualMm(run.number(), hour));
    boolean depthsTell =
        otherMm < UNUSUAL * usualMm && sheetMm > Math.max(WORSE * otherMm, UNUSUAL * usualMm);
    if (!depthsTell) {
      return Optional.empty();
    }
    double strength = Math.min(1, 0.6 + 0.05 * sheetMm / Math.max(usualMm, otherMm));
    String depths =
        Words.text(
            "The wires' depths stand %.1f mm apart by the station sheet, %.1f mm with calibrations"
                + " exchanged",
            sheetMm, otherMm);
    double rangeMm = rangeMm();
    if (rangeMm < LEAST_RANGE_MM) {
      return Optional.of(new Evidence(depths + ".", 0.8 * strength));
    }
    double sheetOff = slopeOff(orders.order(0));
    double otherOff = slopeOff(orders.order(run.number()));
    if (otherOff > SOUND_SLOPE || otherOff > sheetOff + 0.01) {
      return Optional.empty();
    }
    String slopes =
        Words.text(
            "; over a rise of %.0f mm increments differ by %.1f %% and %.1f %%.",
            rangeMm, 100 * sheetOff, 100 * otherOff);
    return Optional.of(new Evidence(depths + slopes, strength));
  }

  private double median(IntToDoubleFunction value) {
    double[] values = IntStream.of(known).mapToDouble(value).toArray();
    return Robust.medianInPlace(values, values.length);
  }

  private double loadMm(int[] order, int hour) {
    return IntStream.range(0, order.length)
        .mapToDouble(w -> hours.depthMm(w, order[w], hour))
        .average()
        .orElse(Double.NaN);
  }

  /** Hours with the smaller third of loads first, by the order that suits. */
  private int[] byLoad() {
    int[] order = order();
    return IntStream.of(known)
        .boxed()
        .sorted((a, b) -> Double.compare(loadMm(order, a), loadMm(order, b)))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** How far apart the loads of the lightest and the heaviest third of the hours lie [mm]. */
  private double rangeMm() {
    int[] order = order();
    return rise(hour -> loadMm(order, hour), byLoad());
  }

  private static double rise(IntToDoubleFunction depthMm, int[] byLoad) {
    int third = Math.max(1, byLoad.length / 3);
    double[] light = Arrays.stream(byLoad, 0, third).mapToDouble(depthMm).toArray();
    double[] heavy =
        Arrays.stream(byLoad, byLoad.length - third, byLoad.length).mapToDouble(depthMm).toArray();
    return Robust.medianInPlace(heavy, third) - Robust.medianInPlace(light, third);
  }

  /** The largest difference from 1 of a wire's slope against the mean of all. */
  private double slopeOff(int[] order) {
    int[] byLoad = byLoad();
    double mean = rise(hour -> loadMm(order, hour), byLoad);
    double most = 0;
    for (int wire = 0; wire < order.length; wire++) {
      int own = wire;
      double slope = rise(hour -> hours.depthMm(own, order[own], hour), byLoad) / mean;
      most = Math.max(most, Math.abs(slope - 1));
    }
    return most;
  }

  /** Where it is. */
  Interval span() {
    Interval season = SharedHours.season(scene).orElseThrow();
    OrderChange change = new OrderChange(scene, hours);
    long from = run.from() == 0 ? season.fromMs() : change.afterMs(run.from(), order());
    long to = run.to() == hours.size() ? season.toMs() : change.beforeMs(run.to(), order());
    return new Interval(from, Math.max(from, to));
  }

  /** From when and to when, in words; empty when it is the whole season. */
  Optional<String> part() {
    Interval span = span();
    var offset = scene.sheet().utcOffset();
    String from = run.from() == 0 ? "" : "from " + Wording.time(span.fromMs(), offset) + " on";
    String to = run.to() == hours.size() ? "" : "up to " + Wording.time(span.toMs(), offset);
    String both = (from + " " + to).trim();
    return both.isEmpty() ? Optional.empty() : Optional.of(both);
  }
}
