package org.rimebook.record;

/** Arithmetic of the proleptic Gregorian calendar (ISO 8601) on whole numbers. */
final class CivilTime {

  static final long DAY_MS = 86_400_000L;

  private static final int DAYS_TO_EPOCH = 719_468;
  private static final int DAYS_PER_ERA = 146_097;

  private CivilTime() {}

  /** Whether a date exists; years are kept to 1900 to 2199, where a logger's clock can stand. */
  static boolean exists(int year, int month, int day) {
    return year >= 1900
        && year <= 2199
        && month >= 1
        && month <= 12
        && day >= 1
        && day <= daysIn(year, month);
  }

  private static int daysIn(int year, int month) {
    if (month == 2) {
      return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 29 : 28;
    }
    return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
  }

  /**
   * Days since 1970-01-01. The year is made to begin in March, so that the leap day is its last;
   * the months' lengths then follow (153 m + 2) / 5 (common practice).
   */
  static long epochDay(int year, int month, int day) {
    int y = month <= 2 ? year - 1 : year;
    int era = Math.floorDiv(y, 400);
    int yearOfEra = y - era * 400;
    int dayOfYear = (153 * (month + (month > 2 ? -3 : 9)) + 2) / 5 + day - 1;
    int dayOfEra = yearOfEra * 365 + yearOfEra / 4 - yearOfEra / 100 + dayOfYear;
    return (long) era * DAYS_PER_ERA + dayOfEra - DAYS_TO_EPOCH;
  }

  /**
   * Milliseconds of the day, or -1 when there is no such time. 24:00 is the end of the day, as ISO
   * 8601:2004 writes it.
   */
  static long clockMs(int hour, int minute, int second, int milli) {
    boolean endOfDay = hour == 24 && minute == 0 && second == 0 && milli == 0;
    if ((hour > 23 && !endOfDay) || minute > 59 || second > 59) {
      return -1;
    }
    return ((hour * 60L + minute) * 60L + second) * 1000L + milli;
  }
}
