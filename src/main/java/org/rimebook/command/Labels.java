package org.rimebook.command;

import java.util.Arrays;
import java.util.function.Function;
import picocli.CommandLine.TypeConversionException;

/** Constants by their names on the command line. */
final class Labels {

  private Labels() {}

  /**
   * The constant of a name.
   *
   * @param what what it is, in words
   */
  static <T> T named(String text, T[] all, Function<T, String> label, String what) {
    return Arrays.stream(all)
        .filter(one -> label.apply(one).equals(text))
        .findFirst()
        .orElseThrow(() -> new TypeConversionException("there is no " + what + " '" + text + "'"));
  }
}
