package org.rimebook.record;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Cuts a text into lines at CR, LF or CRLF. A quoted field may join a few lines, if they make a
 * whole record together; a quote that is never closed joins nothing, so that it can't swallow the
 * rest of the file.
 */
final class LogicalLines {

  /** Stands for the number of fields where no lines may be joined. */
  static final int JOIN_NONE = -1;

  /** Most lines one quoted field may join. */
  private static final int MOST_JOINED = 8;

  /** Characters kept of a line: none that holds readings is so long. */
  private static final int MOST_CHARACTERS = 16_000;

  private final Reader text;
  private final char delimiter;
  private final int fields;
  private final Deque<LogicalLine> ahead = new ArrayDeque<>();
  private long lines;
  private int unread = -1;

  /**
   * @param text the text
   * @param delimiter field delimiter; {@link Fields#ANY} when any common one may be it
   * @param fields fields joined lines must have, 0 when any number will do, or {@link #JOIN_NONE}
   */
  LogicalLines(Reader text, char delimiter, int fields) {
    this.text = new BufferedReader(text);
    this.delimiter = delimiter;
    this.fields = fields;
  }

  /** The next line; empty at the end of the text. */
  Optional<LogicalLine> next() throws IOException {
    LogicalLine line = ahead.isEmpty() ? readLine() : ahead.poll();
    if (line == null || line.text().indexOf('"') < 0) {
      return Optional.ofNullable(line);
    }
    boolean open = Quotes.of(line.text(), delimiter) == Quotes.OPEN;
    return Optional.of(open ? join(line) : line);
  }

  /** The lines joined up to the one that closes the quote, or the first line alone. */
  private LogicalLine join(LogicalLine first) throws IOException {
    List<LogicalLine> taken = new ArrayList<>();
    StringBuilder joined = new StringBuilder(first.text());
    LogicalLine last = first;
    while (taken.size() < MOST_JOINED - 1) {
      LogicalLine more = ahead.isEmpty() ? readLine() : ahead.poll();
      if (more == null) {
        break;
      }
      taken.add(more);
      joined.append(last.ending()).append(more.text());
      last = more;
      if (Quotes.of(joined, delimiter) == Quotes.CLOSED) {
        String text = joined.toString();
        if (fields == 0 || Fields.split(text, delimiter).size() == fields) {
          return new LogicalLine(first.number(), text, last.ending());
        }
        break;
      }
    }
    for (int i = taken.size() - 1; i >= 0; i--) {
      ahead.push(taken.get(i));
    }
    return first;
  }

  /** One line as it stands; null at the end of the text. */
  private LogicalLine readLine() throws IOException {
    StringBuilder line = new StringBuilder();
    int c = read();
    if (c < 0) {
      return null;
    }
    while (c >= 0 && c != '\n' && c != '\r') {
      if (line.length() < MOST_CHARACTERS) {
        line.append((char) c);
      }
      c = read();
    }
    lines++;
    return new LogicalLine(lines, line.toString(), ending(c));
  }

  private String ending(int c) throws IOException {
    if (c < 0) {
      return "";
    }
    if (c == '\n') {
      return "\n";
    }
    unread = read();
    if (unread != '\n') {
      return "\r";
    }
    unread = -1;
    return "\r\n";
  }

  private int read() throws IOException {
    int c = unread >= 0 ? unread : text.read();
    unread = -1;
    return c;
  }
}
