package org.rimebook.export.verify;

/**
 * What was found of one exported file.
 *
 * @param file name of the file in the folder of the tables
 * @param outcome what was found
 * @param words where it differs first and how, with line and column; empty when it follows
 */
public record FileVerdict(String file, Outcome outcome, String words) {

  /** What can be found of a file. */
  public enum Outcome {
    /** The folder gives the same bytes. */
    FOLLOWS("follows"),
    /** The folder gives other bytes. */
    DIFFERS("doesn't follow"),
    /** It isn't there. */
    ABSENT("isn't there");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    /** The outcome in words. */
    public String words() {
      return words;
    }
  }

  /** Whether it speaks against the tables. */
  public boolean against() {
    return outcome == Outcome.DIFFERS || outcome == Outcome.ABSENT;
  }
}
