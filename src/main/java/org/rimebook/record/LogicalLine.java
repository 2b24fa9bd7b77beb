package org.rimebook.record;

/**
 * A line of a file, or several that one quoted field joins.
 *
 * @param number 1-based number of its first line
 * @param text the text without the last line end
 * @param ending the last line end; empty at the end of the file
 */
record LogicalLine(long number, String text, String ending) {

  /** Whether it holds nothing but blanks. */
  boolean isBlank() {
    return text.isBlank();
  }

  /** Whether it is a comment. */
  boolean isComment() {
    return text.startsWith("#");
  }
}
