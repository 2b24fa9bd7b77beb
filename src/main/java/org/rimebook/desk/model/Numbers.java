package org.rimebook.desk.model;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Numbers as people type them: a decimal point or comma, a minus sign or a hyphen. */
public final class Numbers {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d{1,3})?");

  private Numbers() {}

  /** The number; empty when the text isn't one. */
  public static OptionalDouble read(String text) {
    String plain = text.strip().replace('−', '-');
    if (!NUMBER.matcher(plain).matches()) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(plain.replace(',', '.'));
    return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
  }

  /** What to say where there is none. */
  public static String fault(String example) {
    return "Write a number, like " + example;
  }
}
