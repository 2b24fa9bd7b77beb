package org.rimebook.export.figure;

import java.util.Optional;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.Totals;

/**
 * What a figure is drawn from.
 *
 * @param result the season
 * @param totals its totals
 * @param span what is drawn of it
 * @param widthPt width of the figure [pt]
 * @param beside another station's days; empty when none are drawn
 */
record FigureData(
    SeasonResult result, Totals totals, Interval span, double widthPt, Optional<OtherDays> beside) {

  private static final long GAP_MS = 90 * 60_000L;
  private static final double COLUMNS_PER_PT = 2;

  SeasonRecord record() {
    return result.season().record();
  }

  StationSheet sheet() {
    return result.season().sheet();
  }

  Curve curve() {
    return new Curve(span, (int) Math.ceil(widthPt * COLUMNS_PER_PT));
  }

  /** The longest time between two readings a line is drawn across [ms]. */
  long joinedMs() {
    long interval =
        record().sampling().stream().mapToLong(SamplingRun::intervalMs).max().orElse(GAP_MS);
    return Math.max(GAP_MS, interval + interval / 2);
  }

  int firstRow() {
    return record().firstRowAtOrAfter(span.fromMs());
  }

  int endRow() {
    return record().firstRowAtOrAfter(span.toMs());
  }
}
