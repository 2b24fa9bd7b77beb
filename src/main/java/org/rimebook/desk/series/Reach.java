package org.rimebook.desk.series;

import java.util.List;
import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;

/**
 * How far apart two readings of a record may be and still be joined by a line: two and a half
 * sampling intervals, so that one reading lost or left out is bridged and two are not. Common
 * practice.
 */
final class Reach {

  private static final double INTERVALS = 2.5;

  private final int[] firstRow;
  private final long[] reachMs;

  Reach(SeasonRecord record) {
    List<SamplingRun> runs = record.sampling();
    firstRow = runs.stream().mapToInt(SamplingRun::firstRow).toArray();
    reachMs = runs.stream().mapToLong(r -> (long) (INTERVALS * r.intervalMs())).toArray();
  }

  /** The longest time [ms] a line may bridge between two rows. */
  long between(int before, int after) {
    if (firstRow.length == 1) {
      return reachMs[0];
    }
    long longest = 0;
    for (int run = runAt(before); run < firstRow.length && firstRow[run] <= after; run++) {
      longest = Math.max(longest, reachMs[run]);
    }
    return longest;
  }

  private int runAt(int row) {
    int run = firstRow.length - 1;
    while (run > 0 && firstRow[run] > row) {
      run--;
    }
    return run;
  }
}
