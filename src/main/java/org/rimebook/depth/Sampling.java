package org.rimebook.depth;

import org.rimebook.record.SamplingRun;
import org.rimebook.record.SeasonRecord;

/** The sampling interval at each row. */
final class Sampling {

  private final int[] firstRow;
  private final long[] intervalMs;

  Sampling(SeasonRecord record) {
    int runs = record.sampling().size();
    firstRow = new int[runs];
    intervalMs = new long[runs];
    for (int i = 0; i < runs; i++) {
      SamplingRun run = record.sampling().get(i);
      firstRow[i] = run.firstRow();
      intervalMs[i] = run.intervalMs();
    }
  }

  /** Sampling interval [ms] at a row. */
  long intervalMs(int row) {
    int low = 0;
    int high = firstRow.length - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (firstRow[middle] <= row) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return intervalMs[low];
  }
}
