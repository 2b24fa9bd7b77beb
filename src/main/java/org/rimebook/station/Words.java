package org.rimebook.station;

import java.util.Locale;

/** Numbers in words, alike on every machine. */
public final class Words {

  private Words() {}

  /** A {@linkplain String#format format} with a decimal point wherever it is read. */
  public static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** A number of things, for example {@code 1 hour}, {@code 2 hours} or {@code 3 entries}. */
  public static String counted(long count, String word) {
    if (count == 1) {
      return count + " " + word;
    }
    return count
        + " "
        + (word.endsWith("ry") ? word.substring(0, word.length() - 1) + "ies" : word + "s");
  }
}
