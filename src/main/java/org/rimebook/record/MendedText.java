package org.rimebook.record;

import java.io.IOException;
import java.io.Reader;
import java.util.Optional;

/**
 * A text whose lines a CSV reader can't misread: quotes that don't stand right are replaced by
 * U+FFFD, so that their field can't be read but the line's others can, and runs of blanks are made
 * one where blanks delimit. Line ends stay.
 */
final class MendedText extends Reader {

  private final Reader text;
  private final LogicalLines lines;
  private final boolean blanks;
  private final char delimiter;
  private final StringBuilder pending = new StringBuilder();
  private int given;

  MendedText(Reader text, Dialect dialect) {
    this.text = text;
    this.delimiter = dialect.delimiter();
    this.blanks = delimiter == Fields.BLANKS;
    this.lines = new LogicalLines(text, delimiter, dialect.fields());
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    while (given == pending.length()) {
      Optional<LogicalLine> next = lines.next();
      if (next.isEmpty()) {
        return -1;
      }
      pending.setLength(0);
      given = 0;
      pending.append(mended(next.get().text())).append(next.get().ending());
    }
    int count = Math.min(length, pending.length() - given);
    pending.getChars(given, given + count, buffer, offset);
    given += count;
    return count;
  }

  private String mended(String line) {
    String even = blanks ? line.strip().replaceAll("[ \t]+", " ") : line;
    boolean sound = even.indexOf('"') < 0 || Quotes.of(even, delimiter) == Quotes.CLOSED;
    return sound ? even : even.replace('"', '\ufffd');
  }

  @Override
  public void close() throws IOException {
    text.close();
  }
}
