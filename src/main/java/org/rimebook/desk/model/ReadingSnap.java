package org.rimebook.desk.model;

import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;

/**
 * Puts edges of intervals to the readings of a record. A reading counts as inside when {@code from
 * <= stamp < to}: so a start is the stamp of the first reading inside, and an end lies just after
 * the stamp of the last one, a second or, where readings are closer, at the next stamp.
 */
public final class ReadingSnap {

  private static final long JUST_AFTER_MS = 1000;

  private final SeasonRecord record;

  /**
   * @param record the readings, at least one
   */
  public ReadingSnap(SeasonRecord record) {
    this.record = record;
  }

  /** The start nearest to an instant. */
  public long start(long epochMs) {
    return record.stampMs(nearest(epochMs));
  }

  /** The end nearest to an instant: just after a reading. */
  public long end(long epochMs) {
    return after(nearest(epochMs));
  }

  /** From the reading nearest to one instant to that nearest to another, both inside. */
  public Interval between(long oneMs, long otherMs) {
    return new Interval(start(Math.min(oneMs, otherMs)), end(Math.max(oneMs, otherMs)));
  }

  /**
   * An interval with its start elsewhere, so that at least one reading stays inside.
   *
   * @param readings how many readings later; negative for earlier
   */
  public Interval startMoved(Interval interval, int readings) {
    int row = record.firstRowAtOrAfter(interval.fromMs()) + readings;
    return withStart(interval, record.stampMs(within(row)));
  }

  /** An interval with its end elsewhere, so that at least one reading stays inside. */
  public Interval endMoved(Interval interval, int readings) {
    int row = record.firstRowAtOrAfter(interval.toMs()) - 1 + readings;
    return withEnd(interval, record.stampMs(within(row)));
  }

  /** An interval with its start at the reading nearest to an instant, not past its last one. */
  public Interval withStart(Interval interval, long epochMs) {
    long latest = record.stampMs(within(record.firstRowAtOrAfter(interval.toMs()) - 1));
    long from = Math.min(start(epochMs), latest);
    return from < interval.toMs() ? new Interval(from, interval.toMs()) : interval;
  }

  /** An interval with its end after the reading nearest to an instant, not before its first one. */
  public Interval withEnd(Interval interval, long epochMs) {
    long earliest = after(within(record.firstRowAtOrAfter(interval.fromMs())));
    long to = Math.max(end(epochMs), earliest);
    return interval.fromMs() < to ? new Interval(interval.fromMs(), to) : interval;
  }

  private long after(int row) {
    long second = record.stampMs(row) + JUST_AFTER_MS;
    return row + 1 < record.size() ? Math.min(second, record.stampMs(row + 1)) : second;
  }

  private int nearest(long epochMs) {
    int after = within(record.firstRowAtOrAfter(epochMs));
    int before = within(after - 1);
    return epochMs - record.stampMs(before) < record.stampMs(after) - epochMs ? before : after;
  }

  private int within(int row) {
    return Math.min(Math.max(row, 0), record.size() - 1);
  }
}
