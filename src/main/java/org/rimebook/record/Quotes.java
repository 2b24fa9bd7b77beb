package org.rimebook.record;

/** How the quotes of a line stand. */
enum Quotes {
  /** Every quote opens at the start of a field and closes at its end. */
  CLOSED,
  /** The last field is opened and not closed. */
  OPEN,
  /** A quote stands where none belongs. */
  BROKEN;

  private static final String ANY_DELIMITER = ",;\t| ";

  /**
   * Judges a line.
   *
   * @param delimiter field delimiter; {@link Fields#ANY} for any common one
   */
  static Quotes of(CharSequence line, char delimiter) {
    int i = 0;
    boolean fieldStart = true;
    while (i < line.length()) {
      char c = line.charAt(i);
      if (c == '"' && !fieldStart) {
        return BROKEN;
      }
      if (c == '"') {
        int close = closing(line, i + 1);
        if (close < 0) {
          return OPEN;
        }
        boolean ends = close + 1 == line.length() || delimits(line.charAt(close + 1), delimiter);
        if (!ends) {
          return BROKEN;
        }
        i = close;
        fieldStart = false;
      } else {
        fieldStart = delimits(c, delimiter);
      }
      i++;
    }
    return CLOSED;
  }

  /** Index of the quote that closes a field, passing over doubled ones; -1 when there is none. */
  static int closing(CharSequence line, int from) {
    for (int i = from; i < line.length(); i++) {
      if (line.charAt(i) == '"') {
        if (i + 1 == line.length() || line.charAt(i + 1) != '"') {
          return i;
        }
        i++;
      }
    }
    return -1;
  }

  private static boolean delimits(char c, char delimiter) {
    return delimiter == Fields.ANY ? ANY_DELIMITER.indexOf(c) >= 0 : c == delimiter;
  }
}
