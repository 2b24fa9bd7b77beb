package org.rimebook.record;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds rows a logger stamped while its clock was wrong, in two ways.
 *
 * <ul>
 *   <li>A part of the record more than 400 days from the rest: a season has no such gap. The rest
 *       is the part with most rows; a part that starts where clocks start when they lose power is
 *       it only if there is no other.
 *   <li>Within a file, a run of rows that leaps more than 30 days away and back, while the rows
 *       around it leave just the time it took, which no other row covers. Rows that merely stand in
 *       the wrong place don't leave that time free.
 * </ul>
 *
 * <p>The limits are our own choice.
 */
final class ClockCheck {

  private static final long LONGEST_GAP_MS = 400 * CivilTime.DAY_MS;

  /** Steps up to here are no sign of a wrong clock. */
  static final long LEAP_MS = 30 * CivilTime.DAY_MS;

  private static final long LONGEST_OUTAGE_MS = 31 * CivilTime.DAY_MS;
  private static final int STEADY_ROWS = 3;
  private static final int MOST_RUNS = 4;

  /** Days logger and satellite clocks start from (from memory). */
  private static final List<LocalDate> CLOCK_STARTS =
      List.of(
          LocalDate.of(1970, 1, 1),
          LocalDate.of(1980, 1, 1),
          LocalDate.of(1980, 1, 6),
          LocalDate.of(1984, 1, 1),
          LocalDate.of(1990, 1, 1),
          LocalDate.of(2000, 1, 1));

  private final Rows rows;
  private final List<FileReading> readings;
  private final ZoneOffset stationOffset;
  private final boolean[] impossible;
  private int[] sorted;

  ClockCheck(Rows rows, List<FileReading> readings, ZoneOffset stationOffset) {
    this.rows = rows;
    this.readings = readings;
    this.stationOffset = stationOffset;
    impossible = new boolean[rows.size()];
  }

  /**
   * Marks the rows with an impossible clock and sets them aside.
   *
   * @param byTime indexes of all rows by time
   */
  boolean[] impossible(int[] byTime) {
    sorted = byTime;
    farFromTheRest();
    readings.forEach(this::awayAndBack);
    readings.forEach(this::setAside);
    return impossible;
  }

  private void farFromTheRest() {
    List<int[]> parts = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= sorted.length; i++) {
      if (i == sorted.length || stampMs(i) - stampMs(i - 1) > LONGEST_GAP_MS) {
        parts.add(new int[] {start, i});
        start = i;
      }
    }
    int[] rest = parts.get(0);
    for (int[] part : parts) {
      boolean trusted = !startsLikeReset(part);
      boolean more = part[1] - part[0] > rest[1] - rest[0];
      if (trusted == !startsLikeReset(rest) ? more : trusted) {
        rest = part;
      }
    }
    for (int[] part : parts) {
      for (int i = part[0]; i < part[1] && part != rest; i++) {
        impossible[sorted[i]] = true;
      }
    }
  }

  private long stampMs(int sortedIndex) {
    return rows.stampMs(sorted[sortedIndex]);
  }

  private boolean startsLikeReset(int[] part) {
    LocalDate day = LocalDate.ofEpochDay(Math.floorDiv(stampMs(part[0]), CivilTime.DAY_MS));
    return CLOCK_STARTS.stream()
        .anyMatch(start -> !day.isBefore(start.minusDays(1)) && !day.isAfter(start.plusDays(1)));
  }

  private void awayAndBack(FileReading file) {
    List<Integer> leaps = new ArrayList<>();
    for (int row = file.firstRow() + 1; row < file.endRow(); row++) {
      if (Math.abs(rows.stampMs(row) - rows.stampMs(row - 1)) > LEAP_MS) {
        leaps.add(row);
      }
    }
    int leap = 0;
    while (leap < leaps.size() - 1) {
      int back = back(file, leaps, leap);
      for (int row = leaps.get(leap); back > leap && row < leaps.get(back); row++) {
        impossible[row] = true;
      }
      leap = Math.max(back, leap + 1);
    }
  }

  /** The leap that brings the clock back, -1 when it doesn't come back. */
  private int back(FileReading file, List<Integer> leaps, int leap) {
    int last = Math.min(leaps.size() - 1, leap + MOST_RUNS);
    int steadyFrom = leap == 0 ? file.firstRow() : leaps.get(leap - 1);
    if (leaps.get(leap) - steadyFrom < STEADY_ROWS) {
      return -1;
    }
    long took = 0;
    for (int back = leap + 1; back <= last; back++) {
      took += Math.abs(rows.stampMs(leaps.get(back) - 1) - rows.stampMs(leaps.get(back - 1)));
      int steadyTo = back + 1 < leaps.size() ? leaps.get(back + 1) : file.endRow();
      boolean steady = steadyTo - leaps.get(back) >= STEADY_ROWS;
      if (steady && leavesTime(leaps.get(leap), leaps.get(back), took)) {
        return back;
      }
    }
    return -1;
  }

  /** Whether the rows around a run leave the time it took, and nothing else lies in it. */
  private boolean leavesTime(int first, int after, long tookMs) {
    long before = rows.stampMs(first - 1);
    long resumed = rows.stampMs(after);
    long step = Math.abs(before - rows.stampMs(first - 2));
    long free = resumed - before;
    boolean fits = free >= tookMs + 1.5 * step && free <= tookMs + LONGEST_OUTAGE_MS;
    return fits && firstAfter(before) >= firstAtOrAfter(resumed);
  }

  private int firstAfter(long ms) {
    return firstAtOrAfter(ms + 1);
  }

  private int firstAtOrAfter(long ms) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (stampMs(middle) < ms) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private void setAside(FileReading file) {
    String detail = "";
    for (int row = file.firstRow(); row < file.endRow(); row++) {
      if (impossible[row]) {
        if (row == file.firstRow() || !impossible[row - 1]) {
          detail = detail(file, row);
        }
        file.setAside(rows, row, LineReason.BAD_CLOCK, detail);
      }
    }
  }

  /** What the clock showed, and how far that is from the row before it in the file. */
  private String detail(FileReading file, int row) {
    String shown = "clock at " + Instant.ofEpochMilli(rows.stampMs(row)).atOffset(stationOffset);
    if (row == file.firstRow()) {
      return shown;
    }
    long days = Duration.ofMillis(rows.stampMs(row) - rows.stampMs(row - 1)).toDays();
    return shown
        + ", "
        + Math.abs(days)
        + " days "
        + (days < 0 ? "before" : "after")
        + " the line before";
  }
}
