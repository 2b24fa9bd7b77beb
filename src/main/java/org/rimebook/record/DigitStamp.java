package org.rimebook.record;

/** Reads dates run together: {@code yyyyMMdd}, with {@code HH}, {@code mm}, {@code ss} after it. */
final class DigitStamp implements StampReader {

  private static final int EARLIEST_YEAR = 1950;

  private final long stationOffsetMs;
  private final int[] digits = new int[14];

  DigitStamp(long stationOffsetMs) {
    this.stationOffsetMs = stationOffsetMs;
  }

  @Override
  public long epochMs(char[] text, int offset, int length) {
    int count = 0;
    for (int i = offset; i < offset + length; i++) {
      boolean mark = count == 8 && i == offset + 8 && (text[i] == 'T' || text[i] == ' ');
      if (!mark) {
        if (text[i] < '0' || text[i] > '9' || count == digits.length) {
          return UNREADABLE;
        }
        digits[count++] = text[i] - '0';
      }
    }
    return count >= 8 && count % 2 == 0 ? ofDigits(count) : UNREADABLE;
  }

  private long ofDigits(int count) {
    int year = pair(0) * 100 + pair(2);
    long clock =
        CivilTime.clockMs(
            count > 8 ? pair(8) : 0, count > 10 ? pair(10) : 0, count > 12 ? pair(12) : 0, 0);
    if (clock < 0 || year < EARLIEST_YEAR || !CivilTime.exists(year, pair(4), pair(6))) {
      return UNREADABLE;
    }
    return CivilTime.epochDay(year, pair(4), pair(6)) * CivilTime.DAY_MS + clock - stationOffsetMs;
  }

  private int pair(int at) {
    return digits[at] * 10 + digits[at + 1];
  }
}
