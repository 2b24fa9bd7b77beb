package org.rimebook.record;

/** Reads time stamps of one form. */
interface StampReader {

  /** What stands for a stamp that can't be read. */
  long UNREADABLE = Long.MIN_VALUE;

  /**
   * Reads a stamp.
   *
   * @param text buffer that holds it
   * @param offset where it starts
   * @param length its length; no blanks around it
   * @return [ms since epoch], or {@link #UNREADABLE}
   */
  long epochMs(char[] text, int offset, int length);

  /** Reads a stamp that stands alone. */
  default long epochMs(String text) {
    char[] chars = text.strip().toCharArray();
    return epochMs(chars, 0, chars.length);
  }
}
