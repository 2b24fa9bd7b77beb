package org.rimebook.record;

/**
 * A run of consecutive lines of one file that were not taken, for one reason.
 *
 * @param file name of the file relative to the season folder
 * @param firstLine first line of the run, 1-based
 * @param lastLine last line of the run, not before {@code firstLine}
 * @param reason why
 * @param detail more in words, empty when the reason says it all
 */
public record SetAside(
    String file, long firstLine, long lastLine, LineReason reason, String detail) {

  /** Lines in the run. */
  public long lines() {
    return lastLine - firstLine + 1;
  }
}
