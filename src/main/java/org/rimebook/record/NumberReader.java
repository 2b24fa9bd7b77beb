package org.rimebook.record;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Reads the numbers of one file. Besides what the station sheet lists, an empty field, the words
 * below and the sentinels below stand for a missing value; the sentinels are those loggers write by
 * common practice and no frequency [Hz], count, temperature, speed, voltage or percentage can
 * reach. Not safe for threads.
 */
final class NumberReader {

  private static final Set<String> MISSING_WORDS =
      Set.of(
          "",
          "nan",
          "-nan",
          "+nan",
          "na",
          "n/a",
          "#n/a",
          "null",
          "nil",
          "none",
          "missing",
          "-",
          "--",
          "---",
          "inf",
          "-inf",
          "+inf",
          "infinity",
          "-infinity");
  private static final double[] POWERS_OF_TEN = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
  };
  private static final double SENTINEL_BOUND = -6999;
  private static final Set<Double> SENTINELS =
      Set.of(-6999.0, -7999.0, -9999.0, -99999.0, -999999.0);

  private final Set<String> missingWords = new HashSet<>(MISSING_WORDS);
  private final double[] missingNumbers;
  private char decimal;
  private boolean decimalKnown;
  private boolean lastWasNumber;
  private boolean lastWasMissing;
  private char[] scratch = new char[32];

  /**
   * @param missing tokens of the station sheet
   * @param decimal decimal mark; a blank when the first number with one is to settle it
   */
  NumberReader(Collection<String> missing, char decimal) {
    this.decimal = decimal == ' ' ? '.' : decimal;
    this.decimalKnown = decimal != ' ';
    List<Double> numbers = new ArrayList<>();
    NumberReader plain = missing.isEmpty() ? this : withDecimal('.');
    for (String token : missing) {
      missingWords.add(token.strip().toLowerCase(Locale.ROOT));
      double number = plain.value(token.toCharArray(), 0, token.length());
      if (plain.lastWasNumber) {
        numbers.add(number);
      }
    }
    missingNumbers = numbers.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** A reader that knows no missing tokens but the common ones. */
  static NumberReader withDecimal(char decimal) {
    return new NumberReader(List.of(), decimal);
  }

  /** Whether a word commonly stands for a missing value. */
  static boolean isMissingWord(String word) {
    return MISSING_WORDS.contains(word.strip().toLowerCase(Locale.ROOT));
  }

  /**
   * Reads a field.
   *
   * @param text buffer that holds it
   * @param from where it starts; blanks around it are passed over
   * @param length its length
   * @return the number; NaN when it is missing or can't be read
   */
  double value(char[] text, int from, int length) {
    double quick = quick(text, from, from + length);
    if (quick == quick) {
      lastWasNumber = true;
      lastWasMissing = false;
      return isMissing(quick) ? missing() : quick;
    }
    return slow(text, from, length);
  }

  /**
   * A plain decimal number of up to 15 digits, NaN for anything else. Digits and power of ten are
   * exact in a double, so that their quotient is the nearest double (Clinger 1990).
   */
  private double quick(char[] text, int from, int end) {
    boolean negative = from < end && text[from] == '-';
    int start = negative ? from + 1 : from;
    int i = start;
    long digits = 0;
    while (i < end && isDigit(text[i])) {
      digits = digits * 10 + (text[i++] - '0');
    }
    int count = i - start;
    int places = 0;
    if (i < end && text[i] == decimal && decimalKnown) {
      int point = i++;
      while (i < end && isDigit(text[i])) {
        digits = digits * 10 + (text[i++] - '0');
      }
      places = i - point - 1;
      count += places;
    }
    if (i < end || count == 0 || count >= POWERS_OF_TEN.length) {
      return Double.NaN;
    }
    double value = places > 0 ? digits / POWERS_OF_TEN[places] : digits;
    return negative ? -value : value;
  }

  private double slow(char[] text, int from, int length) {
    int start = from;
    int end = from + length;
    while (start < end && isBlank(text[start])) {
      start++;
    }
    while (end > start && isBlank(text[end - 1])) {
      end--;
    }
    lastWasMissing = false;
    lastWasNumber = start < end && startsLikeNumber(text, start, end);
    double value = lastWasNumber ? number(text, start, end - start) : Double.NaN;
    if (lastWasNumber) {
      return isMissing(value) ? missing() : value;
    }
    String word = new String(text, start, end - start).toLowerCase(Locale.ROOT);
    return missingWords.contains(word) ? missing() : Double.NaN;
  }

  /** Whether a field stands for a missing value. */
  boolean isMissing(String field) {
    value(field.toCharArray(), 0, field.length());
    return lastWasMissing;
  }

  /** Whether the last field was a number, missing or not. */
  boolean lastWasNumber() {
    return lastWasNumber;
  }

  /** Whether the last field was neither a number nor missing. */
  boolean lastWasUnreadable() {
    return !lastWasNumber && !lastWasMissing;
  }

  /** The decimal mark in use. */
  char decimal() {
    return decimal;
  }

  private double missing() {
    lastWasMissing = true;
    return Double.NaN;
  }

  private boolean isMissing(double value) {
    for (double missing : missingNumbers) {
      if (value == missing) {
        return true;
      }
    }
    return value <= SENTINEL_BOUND && SENTINELS.contains(value);
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\u00a0';
  }

  /** Keeps out what the parser would take beyond decimal numbers: words, hex, suffixes. */
  private static boolean startsLikeNumber(char[] text, int start, int end) {
    char first = text[start];
    char last = text[end - 1];
    boolean opens = isDigit(first) || first == '-' || first == '+' || first == '.' || first == ',';
    return opens && (isDigit(last) || last == '.' || last == ',') && !hex(text, start, end);
  }

  private static boolean hex(char[] text, int start, int end) {
    for (int i = start; i < Math.min(end, start + 3); i++) {
      if (text[i] == 'x' || text[i] == 'X') {
        return true;
      }
    }
    return false;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private double number(char[] text, int start, int length) {
    if (decimal == '.' && decimalKnown) {
      return parse(text, start, length);
    }
    if (length > scratch.length) {
      scratch = new char[length * 2];
    }
    int commas = 0;
    boolean point = false;
    for (int i = 0; i < length; i++) {
      char c = text[start + i];
      commas += c == ',' ? 1 : 0;
      point |= c == '.';
      scratch[i] = c == ',' ? '.' : c;
    }
    if (!decimalKnown && (point || commas > 0)) {
      decimal = commas == 1 && !point ? ',' : '.';
      decimalKnown = true;
    }
    boolean fits = decimal == ',' ? !point && commas <= 1 : commas == 0;
    lastWasNumber = fits;
    return fits ? parse(scratch, 0, length) : Double.NaN;
  }

  private double parse(char[] text, int start, int length) {
    try {
      double value = JavaDoubleParser.parseDouble(text, start, length);
      lastWasNumber = !Double.isInfinite(value);
      return value;
    } catch (NumberFormatException e) {
      lastWasNumber = false;
      return Double.NaN;
    }
  }
}
