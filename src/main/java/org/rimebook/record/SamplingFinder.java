package org.rimebook.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds the sampling interval along a record. A run goes on through gaps and single odd steps; a
 * new one starts where several steps in a row agree on another interval. Steps agree that differ by
 * up to a second, as of a clock that rounds, or a quarter of the interval if that is less. How many
 * steps and how close are our own choice.
 */
public final class SamplingFinder {

  private static final int STEPS_TO_AGREE = 5;
  private static final long JITTER_MS = 1000;

  private final long[] stampsMs;

  private SamplingFinder(long[] stampsMs) {
    this.stampsMs = stampsMs;
  }

  /**
   * Runs that cover all rows.
   *
   * @param stampsMs stamps, strictly increasing
   * @param startStamps whether a stamp is the start of its interval
   * @return the runs; a record of one row has no interval, its run states 0
   */
  public static List<SamplingRun> find(long[] stampsMs, boolean startStamps) {
    return stampsMs.length < 2
        ? List.of(new SamplingRun(0, 0, 0))
        : new SamplingFinder(stampsMs).runs(startStamps);
  }

  private List<SamplingRun> runs(boolean startStamps) {
    // Step i leads to row i; an interval named by its start belongs to the row it leads from.
    int shift = startStamps ? 1 : 0;
    List<SamplingRun> runs = new ArrayList<>();
    int from = 1;
    long interval = firstInterval();
    for (int step = 2; step < stampsMs.length; step++) {
      if (!agree(step(step), interval) && !agree(step(step), step(step - 1)) && agreement(step)) {
        addRun(runs, from, step, shift);
        from = step;
        interval = step(step);
      }
    }
    addRun(runs, from, stampsMs.length, shift);
    return runs;
  }

  /** The interval of the first steps that agree; of the most steps when none do. */
  private long firstInterval() {
    for (int step = 1; step + STEPS_TO_AGREE <= stampsMs.length; step++) {
      if (agreement(step)) {
        return step(step);
      }
    }
    return commonest(1, stampsMs.length);
  }

  private long step(int step) {
    return stampsMs[step] - stampsMs[step - 1];
  }

  private static boolean agree(long one, long other) {
    return Math.abs(one - other) <= Math.min(JITTER_MS, Math.min(one, other) / 4);
  }

  private boolean agreement(int first) {
    if (first + STEPS_TO_AGREE > stampsMs.length) {
      return false;
    }
    for (int step = first + 1; step < first + STEPS_TO_AGREE; step++) {
      if (!agree(step(step), step(first))) {
        return false;
      }
    }
    return true;
  }

  /** Adds the run of some steps; the first run takes the first row along. */
  private void addRun(List<SamplingRun> runs, int fromStep, int toStep, int shift) {
    int first = runs.isEmpty() ? 0 : fromStep - shift;
    int last = toStep == stampsMs.length ? toStep - 1 : toStep - 1 - shift;
    runs.add(new SamplingRun(first, last, commonest(fromStep, toStep)));
  }

  /** The commonest step, the shorter of two as common. */
  private long commonest(int fromStep, int toStep) {
    Map<Long, Integer> counts = new TreeMap<>();
    int first = fromStep;
    for (int step = fromStep + 1; step <= toStep; step++) {
      if (step == toStep || step(step) != step(first)) {
        counts.merge(step(first), step - first, Integer::sum);
        first = step;
      }
    }
    long best = 0;
    int most = 0;
    for (Map.Entry<Long, Integer> counted : counts.entrySet()) {
      if (counted.getValue() > most) {
        most = counted.getValue();
        best = counted.getKey();
      }
    }
    return best;
  }
}
