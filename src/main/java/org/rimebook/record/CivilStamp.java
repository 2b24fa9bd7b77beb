package org.rimebook.record;

/**
 * Reads dates and times as people and loggers write them: ISO 8601 with {@code T} or a blank, with
 * or without seconds, fraction and offset; dates with strokes, dots or hyphens; English month
 * names; a 12-hour clock. A stamp without an offset is station time. Not safe for threads.
 */
final class CivilStamp implements StampReader {

  private final DateOrder order;
  private final long stationOffsetMs;
  private final StampScanner scanner = new StampScanner();

  /**
   * @param order how a date in numbers is read where its year doesn't stand first in four digits
   * @param stationOffsetMs station time less UTC [ms]
   */
  CivilStamp(DateOrder order, long stationOffsetMs) {
    this.order = order;
    this.stationOffsetMs = stationOffsetMs;
  }

  @Override
  public long epochMs(char[] text, int offset, int length) {
    long quick = isoMs(text, offset, length);
    return quick != UNREADABLE ? quick - stationOffsetMs : general(text, offset, length);
  }

  /** {@code yyyy-MM-dd HH:mm} with optional seconds: the form of nearly every row. */
  private static long isoMs(char[] c, int o, int length) {
    boolean shaped =
        (length == 16 || (length == 19 && c[o + 16] == ':'))
            && c[o + 4] == '-'
            && c[o + 7] == '-'
            && (c[o + 10] == ' ' || c[o + 10] == 'T')
            && c[o + 13] == ':';
    if (!shaped) {
      return UNREADABLE;
    }
    int century = pair(c, o);
    int year = century * 100 + pair(c, o + 2);
    int month = pair(c, o + 5);
    int day = pair(c, o + 8);
    int hour = pair(c, o + 11);
    int minute = pair(c, o + 14);
    int second = length == 19 ? pair(c, o + 17) : 0;
    if ((century | (year - century * 100) | month | day | hour | minute | second) < 0
        || !CivilTime.exists(year, month, day)) {
      return UNREADABLE;
    }
    long clock = CivilTime.clockMs(hour, minute, second, 0);
    return clock < 0 ? UNREADABLE : CivilTime.epochDay(year, month, day) * CivilTime.DAY_MS + clock;
  }

  /** Two digits as a number; negative when they aren't digits. */
  private static int pair(char[] c, int at) {
    int tens = c[at] - '0';
    int ones = c[at + 1] - '0';
    return tens < 0 || tens > 9 || ones < 0 || ones > 9 ? -1 : tens * 10 + ones;
  }

  private long general(char[] text, int offset, int length) {
    if (!scanner.scan(text, offset, length)) {
      return UNREADABLE;
    }
    int[] date = scanner.date(order);
    long clock = scanner.clockMs();
    if (date.length == 0 || clock < 0 || !CivilTime.exists(date[0], date[1], date[2])) {
      return UNREADABLE;
    }
    long utcLess = scanner.offsetMs().orElse(stationOffsetMs);
    return CivilTime.epochDay(date[0], date[1], date[2]) * CivilTime.DAY_MS + clock - utcLess;
  }
}
