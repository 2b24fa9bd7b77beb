package org.rimebook.desk.model;

/**
 * Something to tell the analyst in words.
 *
 * @param weight how much it matters
 * @param words what happened, and what to do where something is to be done
 */
public record Notice(Weight weight, String words) {

  /** Nothing to tell. */
  public static final Notice NONE = new Notice(Weight.QUIET, "");

  /** How much a notice matters. */
  public enum Weight {
    /** All is well. */
    QUIET,
    /** Worth reading. */
    NOTE,
    /** Something asked for wasn't done. */
    FAULT
  }
}
