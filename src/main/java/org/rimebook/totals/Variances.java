package org.rimebook.totals;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;

/** Variances of the catch over hours, days and what is held together, each worked out once. */
final class Variances {

  private final CatchSeries series;
  private final Map<Interval, Double> mm2 = new ConcurrentHashMap<>();

  Variances(CatchSeries series) {
    this.series = series;
  }

  /**
   * The variances of another series.
   *
   * @param touched where it differs; what lies outside is kept
   */
  Variances revised(CatchSeries other, Interval touched) {
    Variances revised = new Variances(other);
    mm2.forEach(
        (span, variance) -> {
          if (!span.overlaps(touched)) {
            revised.mm2.put(span, variance);
          }
        });
    return revised;
  }

  /** Variance of the catch between two instants [mm²]. */
  double mm2(long fromMs, long toMs) {
    return mm2.computeIfAbsent(
        new Interval(fromMs, toMs), span -> series.varianceMm2(span.fromMs(), span.toMs()));
  }
}
