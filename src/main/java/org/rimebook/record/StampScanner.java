package org.rimebook.record;

import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;

/** Takes a written date and time apart into numbers. Reused from stamp to stamp. */
final class StampScanner {

  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
  private static final List<String> WEEKDAYS =
      List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
  private static final List<String> UTC_WORDS = List.of("z", "utc", "gmt");
  private static final int NAME_IS_MONTH = 100;

  private final int[] dateNumbers = new int[3];
  private final int[] dateDigits = new int[3];
  private final int[] clock = new int[3];
  private char[] text;
  private int at;
  private int end;
  private int milli;
  private boolean halfDayClock;
  private boolean afternoon;
  private OptionalLong offsetMs;

  /** Takes a stamp apart; false when it isn't made like one. */
  boolean scan(char[] chars, int offset, int length) {
    text = chars;
    at = offset;
    end = offset + length;
    milli = 0;
    clock[0] = 0;
    clock[1] = 0;
    clock[2] = 0;
    halfDayClock = false;
    afternoon = false;
    offsetMs = OptionalLong.empty();
    return datePart() && clockPart() && zonePart() && at == end;
  }

  private boolean datePart() {
    for (int part = 0; part < 3; part++) {
      if (part > 0 && !skip("-/. ,")) {
        return false;
      }
      skip(" ");
      if (at < end && Character.isLetter(text[at])) {
        String word = word();
        if (part == 0 && WEEKDAYS.contains(firstThree(word))) {
          skip("., ");
          part--;
          continue;
        }
        int month = MONTHS.indexOf(firstThree(word));
        if (month < 0) {
          return false;
        }
        dateNumbers[part] = month + 1;
        dateDigits[part] = NAME_IS_MONTH;
      } else {
        int start = at;
        dateNumbers[part] = number(4);
        dateDigits[part] = at - start;
        if (at == start) {
          return false;
        }
      }
    }
    return true;
  }

  private static String firstThree(String word) {
    return word.length() < 3 ? word : word.substring(0, 3);
  }

  private boolean clockPart() {
    if (at == end) {
      return true;
    }
    boolean marked = text[at] == 'T' || text[at] == 't';
    if (marked) {
      at++;
    } else if (!skip(" ,;:")) {
      return false;
    }
    for (int part = 0; part < 3; part++) {
      int start = at;
      clock[part] = number(2);
      if (at == start) {
        return false;
      }
      if (at == end || text[at] != ':') {
        return part > 0 && fraction(part) && halfDay();
      }
      at++;
    }
    return false;
  }

  private boolean fraction(int lastPart) {
    if (at == end || (text[at] != '.' && text[at] != ',')) {
      return true;
    }
    at++;
    int start = at;
    int weight = 100;
    for (; at < end && isDigit(text[at]); at++) {
      milli += weight * (text[at] - '0');
      weight /= 10;
    }
    return at > start && lastPart == 2;
  }

  private boolean halfDay() {
    int before = at;
    skip(" ");
    String word = word().replace(".", "");
    if (word.equals("am") || word.equals("pm")) {
      halfDayClock = true;
      afternoon = word.equals("pm");
      return true;
    }
    at = before;
    return true;
  }

  private boolean zonePart() {
    skip(" ");
    if (at == end) {
      return true;
    }
    if (Character.isLetter(text[at])) {
      offsetMs = OptionalLong.of(0);
      return UTC_WORDS.contains(word());
    }
    int sign = text[at] == '+' ? 1 : -1;
    if (text[at] != '+' && text[at] != '-' && text[at] != '\u2212') {
      return false;
    }
    at++;
    int start = at;
    int hours = number(2);
    boolean twoDigits = at - start == 2;
    if (at < end && text[at] == ':') {
      at++;
    }
    int minutes = number(2);
    offsetMs = OptionalLong.of(sign * (hours * 60L + minutes) * 60_000L);
    return twoDigits && hours <= 18 && minutes <= 59;
  }

  private boolean skip(String any) {
    int start = at;
    while (at < end && any.indexOf(text[at]) >= 0) {
      at++;
    }
    return at > start;
  }

  private int number(int mostDigits) {
    int value = 0;
    for (int digits = 0; digits < mostDigits && at < end && isDigit(text[at]); digits++) {
      value = value * 10 + text[at] - '0';
      at++;
    }
    return value;
  }

  private String word() {
    int start = at;
    while (at < end && (Character.isLetter(text[at]) || (text[at] == '.' && at > start))) {
      at++;
    }
    return new String(text, start, at - start).toLowerCase(Locale.ROOT);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Year, month and day; empty when the order can't be that of the stamp. */
  int[] date(DateOrder order) {
    for (int part = 0; part < 2; part++) {
      if (dateDigits[part] == NAME_IS_MONTH) {
        return named(part);
      }
    }
    if (dateDigits[0] == 4) {
      return dateDigits[1] <= 2 && dateDigits[2] <= 2 ? fields(0, 1, 2) : new int[0];
    }
    if (order == DateOrder.YEAR_MONTH_DAY) {
      return dateDigits[2] <= 2 ? fields(0, 1, 2) : new int[0];
    }
    return order == DateOrder.DAY_MONTH_YEAR ? fields(2, 1, 0) : fields(2, 0, 1);
  }

  /** A month by name; of the other two the year stands last unless four digits stand first. */
  private int[] named(int month) {
    int other = month == 0 ? 1 : 0;
    return dateDigits[other] == 4 ? fields(other, month, 2) : fields(2, month, other);
  }

  private int[] fields(int year, int month, int day) {
    return dateDigits[year] == 2 || dateDigits[year] == 4
        ? new int[] {fullYear(year), dateNumbers[month], dateNumbers[day]}
        : new int[0];
  }

  /** Two digits are a year from 1970 to 2069, the span of the clocks that write them. */
  private int fullYear(int part) {
    int year = dateNumbers[part];
    if (dateDigits[part] == 4) {
      return year;
    }
    return year >= 70 ? 1900 + year : 2000 + year;
  }

  /** Milliseconds of the day; negative when there is no such time. */
  long clockMs() {
    if (!halfDayClock) {
      return CivilTime.clockMs(clock[0], clock[1], clock[2], milli);
    }
    if (clock[0] < 1 || clock[0] > 12) {
      return -1;
    }
    int hour = clock[0] % 12 + (afternoon ? 12 : 0);
    return CivilTime.clockMs(hour, clock[1], clock[2], milli);
  }

  /** The offset from UTC written with the stamp [ms]. */
  OptionalLong offsetMs() {
    return offsetMs;
  }
}
