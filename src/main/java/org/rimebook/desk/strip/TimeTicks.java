package org.rimebook.desk.strip;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.rimebook.station.Interval;

/**
 * Where the time axis is marked, in two rows: hours over days, days over months, or months over
 * years, in station time.
 *
 * @param upper the finer row
 * @param lower the coarser row; each tick names the time from it to the next
 * @param finest the unit of the finer row
 */
record TimeTicks(List<Tick> upper, List<Tick> lower, Unit finest) {

  private static final long MINUTE_MS = 60_000;
  private static final long DAY_MS = 86_400_000;
  private static final int[] MINUTES = {1, 2, 5, 10, 15, 30, 60, 120, 180, 360, 720};
  private static final int[] DAYS = {1, 2, 5, 10, 15};
  private static final int[] MONTHS = {1, 3, 6, 12};
  private static final int DAYS_NEAR_END = 28;
  private static final int DAY_ROOM_IN_EIGHTHS = 5;

  private static final DateTimeFormatter HOUR = words("HH:mm");
  private static final DateTimeFormatter DAY = words("EEE d MMMM uuuu");
  private static final DateTimeFormatter DAY_OF_MONTH = words("d");
  private static final DateTimeFormatter MONTH = words("MMMM uuuu");
  private static final DateTimeFormatter MONTH_NAME = words("MMM");
  private static final DateTimeFormatter YEAR = words("uuuu");

  /** Units of the finer row. */
  enum Unit {
    HOURS,
    DAYS,
    MONTHS
  }

  /**
   * A mark.
   *
   * @param epochMs where [ms since epoch]
   * @param words what stands there
   */
  record Tick(long epochMs, String words) {}

  /**
   * Marks for a stretch of time.
   *
   * @param visible the stretch
   * @param offset station time
   * @param apartMs the least time between two marks of the finer row [ms]
   */
  static TimeTicks of(Interval visible, ZoneOffset offset, long apartMs) {
    for (int minutes : MINUTES) {
      if (minutes * MINUTE_MS >= apartMs) {
        return new TimeTicks(hours(visible, offset, minutes), days(visible, offset), Unit.HOURS);
      }
    }
    for (int days : DAYS) {
      if (days * DAY_MS >= apartMs) {
        return new TimeTicks(
            daysOfMonth(visible, offset, days), months(visible, offset, 1, MONTH), Unit.DAYS);
      }
    }
    int step = MONTHS[MONTHS.length - 1];
    for (int i = MONTHS.length - 1; i >= 0; i--) {
      step = MONTHS[i] * DAYS_NEAR_END * DAY_MS >= apartMs ? MONTHS[i] : step;
    }
    return new TimeTicks(
        months(visible, offset, step, MONTH_NAME), months(visible, offset, 12, YEAR), Unit.MONTHS);
  }

  /**
   * Marks whose words don't touch: days of the month take less room than hours or months.
   *
   * @param visible the stretch
   * @param offset station time
   * @param apartMs the least time between two marks, unless they are days [ms]
   */
  static TimeTicks reading(Interval visible, ZoneOffset offset, long apartMs) {
    TimeTicks wide = of(visible, offset, apartMs);
    if (wide.finest() != Unit.DAYS) {
      return wide;
    }
    TimeTicks closer = of(visible, offset, apartMs * DAY_ROOM_IN_EIGHTHS / 8);
    return closer.finest() == Unit.DAYS ? closer : wide;
  }

  private static List<Tick> hours(Interval visible, ZoneOffset offset, int minutes) {
    long shiftMs = offset.getTotalSeconds() * 1000L;
    long stepMs = minutes * MINUTE_MS;
    List<Tick> ticks = new ArrayList<>();
    long local = -Math.floorDiv(-(visible.fromMs() + shiftMs), stepMs) * stepMs;
    for (; local - shiftMs < visible.toMs(); local += stepMs) {
      ticks.add(new Tick(local - shiftMs, HOUR.format(local(local - shiftMs, offset))));
    }
    return ticks;
  }

  private static List<Tick> days(Interval visible, ZoneOffset offset) {
    List<Tick> ticks = new ArrayList<>();
    LocalDate day = local(visible.fromMs(), offset).toLocalDate();
    for (; startMs(day, offset) < visible.toMs(); day = day.plusDays(1)) {
      ticks.add(new Tick(startMs(day, offset), DAY.format(day)));
    }
    return ticks;
  }

  /** Days 1, 1 + step, and so on of each month; none so near its end that two would be close. */
  private static List<Tick> daysOfMonth(Interval visible, ZoneOffset offset, int step) {
    List<Tick> ticks = new ArrayList<>();
    LocalDate day = local(visible.fromMs(), offset).toLocalDate();
    for (; startMs(day, offset) < visible.toMs(); day = day.plusDays(1)) {
      boolean marked = (day.getDayOfMonth() - 1) % step == 0;
      boolean close = step > 1 && day.lengthOfMonth() - day.getDayOfMonth() + 1 < step;
      if (marked && !close && startMs(day, offset) >= visible.fromMs()) {
        ticks.add(new Tick(startMs(day, offset), DAY_OF_MONTH.format(day)));
      }
    }
    return ticks;
  }

  private static List<Tick> months(
      Interval visible, ZoneOffset offset, int step, DateTimeFormatter words) {
    List<Tick> ticks = new ArrayList<>();
    LocalDate first = local(visible.fromMs(), offset).toLocalDate().withDayOfMonth(1);
    LocalDate month = first.minusMonths((first.getMonthValue() - 1) % step);
    for (; startMs(month, offset) < visible.toMs(); month = month.plusMonths(step)) {
      ticks.add(new Tick(startMs(month, offset), words.format(month)));
    }
    return ticks;
  }

  private static long startMs(LocalDate day, ZoneOffset offset) {
    return day.toEpochDay() * DAY_MS - offset.getTotalSeconds() * 1000L;
  }

  private static LocalDateTime local(long epochMs, ZoneOffset offset) {
    long seconds = Math.floorDiv(epochMs, 1000L);
    int nanos = (int) Math.floorMod(epochMs, 1000L) * 1_000_000;
    return LocalDateTime.ofEpochSecond(seconds, nanos, offset);
  }

  private static DateTimeFormatter words(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.UK);
  }
}
