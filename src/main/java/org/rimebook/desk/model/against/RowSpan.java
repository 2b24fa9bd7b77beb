package org.rimebook.desk.model.against;

import java.util.List;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/**
 * Rows of a record that follow each other.
 *
 * @param from first row
 * @param to first row after
 */
public record RowSpan(int from, int to) {

  /** The rows stamped in a stretch of time. */
  public static RowSpan of(SeasonRecord record, Interval interval) {
    return new RowSpan(
        record.firstRowAtOrAfter(interval.fromMs()), record.firstRowAtOrAfter(interval.toMs()));
  }

  /** The rows of this span stamped in any of some stretches that don't overlap. */
  public List<RowSpan> in(SeasonRecord record, List<Interval> intervals) {
    return intervals.stream()
        .map(interval -> of(record, interval))
        .map(other -> new RowSpan(Math.max(from, other.from), Math.min(to, other.to)))
        .filter(span -> span.from < span.to)
        .toList();
  }
}
