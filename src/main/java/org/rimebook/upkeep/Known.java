package org.rimebook.upkeep;

import java.util.OptionalDouble;

/**
 * A number, or why there is none.
 *
 * @param value the number; empty when it can't be told
 * @param why why it can't, in words; empty when it is known
 */
public record Known(OptionalDouble value, String why) {

  static Known of(double value) {
    return new Known(OptionalDouble.of(value), "");
  }

  static Known not(String why) {
    return new Known(OptionalDouble.empty(), why);
  }
}
