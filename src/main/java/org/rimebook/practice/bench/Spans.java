package org.rimebook.practice.bench;

import java.util.List;
import org.rimebook.practice.Truth;
import org.rimebook.practice.published.HourGrid;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/**
 * The spans that a table has a total for: an hour or day, or several when they have only a common
 * total. Whatever is compared with the table is summed over the same spans.
 */
final class Spans {

  private static final long HOUR_MS = 3_600_000;

  private final List<TotalRow> rows;

  private Spans(List<TotalRow> rows) {
    this.rows = rows;
  }

  static Spans of(List<TotalRow> table) {
    return new Spans(table.stream().filter(row -> row.catchUnits().isPresent()).toList());
  }

  private static Interval interval(TotalRow row) {
    long from = row.accumulatedSinceMs().orElse(row.interval().fromMs());
    return new Interval(from, row.interval().toMs());
  }

  /** Time that has a total [ms]. */
  long coveredMs() {
    return rows.stream().mapToLong(row -> interval(row).lengthMs()).sum();
  }

  /** What entered the bucket [mm]. */
  double[] truthMm(Truth truth) {
    return rows.stream().mapToDouble(row -> truth.catchMm(interval(row))).toArray();
  }

  /** What the table says [mm]. */
  double[] printedMm(Resolution resolution) {
    return rows.stream()
        .mapToDouble(row -> resolution.toMm(row.catchUnits().orElseThrow()).doubleValue())
        .toArray();
  }

  /** Standard uncertainty the table states [mm]. */
  double[] uncertaintyMm() {
    return rows.stream().mapToDouble(row -> row.uncertaintyMm().orElseThrow()).toArray();
  }

  /**
   * Sums of an hourly series [mm].
   *
   * @param hourlyMm one value for each hour of the grid
   * @param grid the hours; every span is some of them
   */
  double[] sumsMm(double[] hourlyMm, HourGrid grid) {
    return rows.stream().mapToDouble(row -> sumMm(interval(row), hourlyMm, grid)).toArray();
  }

  private static double sumMm(Interval span, double[] hourlyMm, HourGrid grid) {
    int from = (int) Math.max(0, (span.fromMs() - grid.startMs()) / HOUR_MS);
    int to = (int) Math.min(grid.hours(), (span.toMs() - grid.startMs()) / HOUR_MS);
    double sum = 0;
    for (int hour = from; hour < to; hour++) {
      sum += hourlyMm[hour];
    }
    return sum;
  }
}
