package org.rimebook.findings;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Reads instants as findings write them. */
final class Instants {

  private Instants() {}

  static Optional<Instant> parse(String text) {
    try {
      return Optional.of(Instant.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
