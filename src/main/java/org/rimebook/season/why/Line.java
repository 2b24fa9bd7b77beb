package org.rimebook.season.why;

import org.rimebook.findings.Finding;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Interval;

/** One line of an explanation. */
public sealed interface Line {

  /**
   * Words alone.
   *
   * @param words the words
   */
  record Words(String words) implements Line {}

  /**
   * More about the line before.
   *
   * @param words the words
   */
  record Detail(String words) implements Line {}

  /**
   * One part of a sum.
   *
   * @param amount the part with its unit
   * @param words what it is
   */
  record Part(String amount, String words) implements Line {}

  /**
   * What one wire read.
   *
   * @param wire its name
   * @param words readings, and how its depth changed
   */
  record OfWire(String wire, String words) implements Line {}

  /**
   * Words about another stretch of time.
   *
   * @param before words before the stretch
   * @param span the stretch
   * @param after words after it; may be empty
   */
  record OfSpan(String before, Interval span, String after) implements Line {}

  /**
   * Catch of one stretch of time.
   *
   * @param span the stretch
   * @param catchMm the catch [mm]
   * @param words what is known of it
   */
  record OfPiece(Interval span, double catchMm, String words) implements Line {}

  /**
   * An entry of the notebook.
   *
   * @param entry the entry
   * @param span what it is about
   */
  record OfEntry(Entry entry, Interval span) implements Line {}

  /**
   * Something that looks wrong.
   *
   * @param finding what, where and why
   */
  record OfFinding(Finding finding) implements Line {}
}
