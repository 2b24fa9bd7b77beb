package org.rimebook.desk.model.bench;

import java.util.Optional;

/** Entries are signed. */
final class Signature {

  private Signature() {}

  /** What to say when it isn't known who writes. */
  static Optional<String> missing(Moment now, String initials) {
    return now.unsigned() && initials.isEmpty()
        ? Optional.of("To store it, enter your initials: entries are signed.")
        : Optional.empty();
  }
}
