package org.rimebook.findings;

import java.util.List;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;

/** Steps of a record from a row to the next, against the sampling interval. */
final class Steps {

  private Steps() {}

  /** Takes a step that is longer than it should be. */
  interface Taker {

    /**
     * Takes a step.
     *
     * @param row the row after it
     * @param usualMs what it should have been [ms]
     */
    void take(int row, long usualMs);
  }

  /**
   * Steps of at least so many intervals and so long, in the order of time. Where the sampling
   * changes either interval is usual.
   */
  static void longer(SeasonRecord record, double leastIntervals, long leastMs, Taker taker) {
    List<SamplingRun> runs = record.sampling();
    for (int i = 0; i < runs.size(); i++) {
      SamplingRun run = runs.get(i);
      for (int row = Math.max(1, run.firstRow()); row <= run.lastRow(); row++) {
        long step = record.stampMs(row) - record.stampMs(row - 1);
        if (step >= leastMs && step >= leastIntervals * run.intervalMs()) {
          long usual = run.intervalMs();
          if (row == run.firstRow() && i > 0) {
            usual = Math.max(usual, runs.get(i - 1).intervalMs());
          }
          if (row == run.lastRow() && i + 1 < runs.size()) {
            usual = Math.max(usual, runs.get(i + 1).intervalMs());
          }
          if (step >= leastIntervals * usual) {
            taker.take(row, usual);
          }
        }
      }
    }
  }
}
