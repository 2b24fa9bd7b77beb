package org.rimebook.totals;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;
import org.rimebook.undercatch.Undercatch;

/**
 * The sum of the hours that could be adjusted for wind undercatch.
 *
 * @param units adjusted catch of these hours, in whole units of the totals' resolution
 * @param catchUnits what the bucket caught in the same hours, in whole units
 * @param stretches the hours, those that follow each other as one
 */
public record AdjustedTotal(long units, long catchUnits, List<Interval> stretches) {

  public AdjustedTotal {
    stretches = List.copyOf(stretches);
  }

  /** The total of adjusted hours, at least one, in order. */
  static AdjustedTotal of(List<TotalRow> adjusted) {
    long units = 0;
    long catchUnits = 0;
    List<Interval> stretches = new ArrayList<>();
    long from = adjusted.get(0).interval().fromMs();
    long to = from;
    for (TotalRow hour : adjusted) {
      units += hour.adjustedUnits().orElseThrow();
      catchUnits += hour.catchUnits().orElseThrow();
      if (hour.interval().fromMs() > to) {
        stretches.add(new Interval(from, to));
        from = hour.interval().fromMs();
      }
      to = hour.interval().toMs();
    }
    stretches.add(new Interval(from, to));
    return new AdjustedTotal(units, catchUnits, stretches);
  }

  /**
   * Standard uncertainty (k = 1) [mm], {@linkplain Undercatch#uncertaintyMm of catch and adjustment
   * together}. Stretches of hours are taken as independent, which leaves out what all catch of the
   * season may be off by together across the holes between them.
   *
   * @param resolution resolution the total is in
   * @param series the catch the hours were made from
   */
  public double uncertaintyMm(Resolution resolution, CatchSeries series) {
    double varianceMm2 = 0;
    for (Interval stretch : stretches) {
      varianceMm2 += series.varianceMm2(stretch.fromMs(), stretch.toMs());
    }
    return Undercatch.uncertaintyMm(
        catchUnits * resolution.mm(), Math.sqrt(varianceMm2), units * resolution.mm());
  }
}
