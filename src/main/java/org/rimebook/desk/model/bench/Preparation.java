package org.rimebook.desk.model.bench;

import java.util.Optional;
import org.rimebook.export.leaflet.Leaflet;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;

/**
 * What is to be made of a form.
 *
 * @param missing why nothing can be made, and what to do; empty text when something can
 * @param making makes it, away from the event thread
 */
record Preparation(String missing, Optional<Making> making) {

  /** Makes a paper of values that don't change any more. */
  @FunctionalInterface
  interface Making {
    /**
     * Makes it.
     *
     * @param progress throws when the making is cancelled
     * @throws InputException when it can't be made
     * @throws IllegalArgumentException in words when it can't be made
     */
    Outcome make(Progress progress) throws InputException;
  }

  /**
   * What was made.
   *
   * @param leaflet what goes on paper
   * @param fact what may be stored, if anything
   * @param words about storing: why it can't be, or what to look at first; may be empty
   */
  record Outcome(Leaflet leaflet, Optional<Fact> fact, String words) {
    Outcome(Leaflet leaflet) {
      this(leaflet, Optional.empty(), "");
    }
  }

  static Preparation not(String why) {
    return new Preparation(why, Optional.empty());
  }

  static Preparation of(Making making) {
    return new Preparation("", Optional.of(making));
  }
}
