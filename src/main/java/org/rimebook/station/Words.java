package org.rimebook.station;

import java.util.Locale;

/** Numbers in words, alike on every machine. */
public final class Words {

  private Words() {}

  /** A {@linkplain String#format format} with a decimal point wherever it is read. */
  public static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** A number of things, for example {@code 1 hour} or {@code 2 hours}. */
  public static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
