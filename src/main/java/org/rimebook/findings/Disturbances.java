package org.rimebook.findings;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.record.SeasonRecord;

/**
 * Finds readings that something other than weather moved on all wires alike: falls no evaporation
 * explains and rises faster than any rain, taken together while they follow each other or the
 * bucket is off its wires. All limits are our own choice but the rate, which is 25 mm in 5 min
 * (Baker et al. 2005, NOAA Technical Note NCDC USCRN-05-1).
 */
final class Disturbances {

  /** Rate no rain reaches [mm/h]: 25 mm in 5 min. */
  static final double MOST_MM_PER_H = 300;

  private static final double HOUR_MS = 3_600_000;
  private static final double LEAST_FALL_MM = 1.5;
  private static final double LEAST_RISE_MM = 5;
  private static final double USUAL_STEPS = 8;

  /** What may drain away slowly in an hour without a hand [mm], and evaporate in one [mm]. */
  private static final double SLOW_MM = 3;

  private static final double EVAPORATED_MM_PER_H = 5.0 / 24;

  /** Disturbances closer than this are one [ms]. */
  private static final long TOGETHER_MS = 90 * 60_000;

  /** The bucket is off no longer than this [ms]. */
  private static final long OFF_MS = 12 * 3_600_000;

  /** Depth below which nothing hangs from the wires, when it had been much more [mm]. */
  static final double EMPTY_MM = 20;

  private static final double RESTLESS_MM = 0.5;
  private static final double RESTLESS_STEPS = 5;
  private static final int RESTLESS_ROWS = 3;
  private static final int MARGIN_ROWS = 2;
  private static final long COARSE_MS = 10 * 60_000;
  private static final long EDGE_MS = 45 * 60_000;

  private final CommonSteps steps;
  private final SeasonRecord record;

  private Disturbances(CommonSteps steps, SeasonRecord record) {
    this.steps = steps;
    this.record = record;
  }

  static List<Disturbance> in(CommonSteps steps, SeasonRecord record) {
    return new Disturbances(steps, record).all();
  }

  private List<Disturbance> all() {
    List<Disturbance> found = new ArrayList<>();
    List<Integer> together = new ArrayList<>();
    int end = 0;
    for (int row = 1; row < steps.size(); row++) {
      if (isEvent(row)) {
        if (!together.isEmpty() && !goesOn(together.get(together.size() - 1), row)) {
          Disturbance done = made(together, end);
          found.add(done);
          end = done.endRow();
          together.clear();
        }
        together.add(row);
      }
    }
    if (!together.isEmpty()) {
      found.add(made(together, end));
    }
    return found;
  }

  private boolean isEvent(int row) {
    double step = steps.stepMm(row);
    if (!(step < -LEAST_FALL_MM || step > LEAST_RISE_MM)) {
      return false;
    }
    double hours = steps.sinceMs(row) / HOUR_MS;
    double weather =
        step < 0
            ? LEAST_FALL_MM + SLOW_MM * Math.min(1, hours) + EVAPORATED_MM_PER_H * hours
            : Math.max(LEAST_RISE_MM, MOST_MM_PER_H * hours);
    double usual = steps.usualStepMm(row);
    // Of NaN nothing is usual, and no more can be asked.
    return Math.abs(step) > weather && !(Math.abs(step) <= USUAL_STEPS * usual);
  }

  private boolean goesOn(int event, int next) {
    long apart = record.stampMs(next) - record.stampMs(event);
    return apart <= TOGETHER_MS || apart <= OFF_MS && isOff(event, next);
  }

  /** Whether the wires carried nothing, or gave nothing, from one reading to another. */
  private boolean isOff(int from, int to) {
    int off = 0;
    for (int row = from; row < to; row++) {
      double depth = Disturbance.median(Disturbance.wireDepths(steps, row));
      off += depth < EMPTY_MM || Double.isNaN(depth) ? 1 : 0;
    }
    return off >= 0.9 * (to - from);
  }

  private Disturbance made(List<Integer> events, int notBefore) {
    int first = events.get(0);
    int last = events.get(events.size() - 1);
    long edge = record.stampMs(first) - EDGE_MS;
    while (first > notBefore + 1 && record.stampMs(first) > edge && restless(first, -1)) {
      first--;
    }
    edge = record.stampMs(last) + EDGE_MS;
    while (last + 1 < steps.size() && record.stampMs(last) < edge && restless(last, 1)) {
      last++;
    }
    int margin = steps.sinceMs(last) >= COARSE_MS ? 1 : MARGIN_ROWS;
    int[] rows = {
      Math.max(notBefore, first - margin), Math.min(steps.size(), last + margin),
    };
    int[] all = events.stream().mapToInt(Integer::intValue).toArray();
    return Disturbance.of(steps, record, all, rows);
  }

  /** Whether one of the next few steps is larger than usual. */
  private boolean restless(int row, int direction) {
    double limit = Math.max(RESTLESS_MM, RESTLESS_STEPS * steps.usualStepMm(row));
    for (int i = 1; i <= RESTLESS_ROWS; i++) {
      int at = row + i * direction;
      if (at > 0 && at < steps.size() && Math.abs(steps.stepMm(at)) > limit) {
        return true;
      }
    }
    return false;
  }
}
