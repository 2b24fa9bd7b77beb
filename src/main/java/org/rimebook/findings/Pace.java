package org.rimebook.findings;

import java.util.Comparator;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/**
 * The sampling interval most rows have, and rows as time.
 *
 * @param record the readings
 * @param intervalMs sampling interval of most rows [ms]
 */
record Pace(SeasonRecord record, long intervalMs) {

  static Pace of(SeasonRecord record) {
    return new Pace(
        record,
        record.sampling().stream()
            .max(Comparator.comparingInt((SamplingRun run) -> run.lastRow() - run.firstRow()))
            .map(SamplingRun::intervalMs)
            .orElse(1L));
  }

  /** How many readings a time holds, at least one. */
  int readings(long ms) {
    return (int) Math.max(1, Math.min(Integer.MAX_VALUE, ms / Math.max(1, intervalMs)));
  }

  /** The time in which readings are left out when all of some rows are, and no others. */
  Interval span(int fromRow, int toRow) {
    long toMs =
        toRow < record.size()
            ? Math.min(record.stampMs(toRow), record.stampMs(toRow - 1) + intervalMs)
            : record.stampMs(toRow - 1) + intervalMs;
    return new Interval(record.stampMs(fromRow), toMs);
  }
}
