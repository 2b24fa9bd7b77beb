package org.rimebook.record;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import java.util.List;

/** Remembers the end of the text it gave. */
final class TailReader extends FilterReader {

  private static final int REMEMBERED = 1 << 13;

  private final char[] tail = new char[REMEMBERED];
  private int length;

  TailReader(Reader in) {
    super(in);
  }

  @Override
  public int read(char[] buffer, int offset, int wanted) throws IOException {
    int count = super.read(buffer, offset, wanted);
    if (count > 0) {
      remember(buffer, offset + count, count);
    }
    return count;
  }

  private void remember(char[] buffer, int end, int count) {
    int fresh = Math.min(count, REMEMBERED);
    int kept = Math.min(length, REMEMBERED - fresh);
    System.arraycopy(tail, length - kept, tail, 0, kept);
    System.arraycopy(buffer, end - fresh, tail, kept, fresh);
    length = kept + fresh;
  }

  /** Whether the text so far ends in the middle of a line. */
  boolean endsInLine() {
    return length > 0 && tail[length - 1] != '\n' && tail[length - 1] != '\r';
  }

  /** The last lines of the text so far; the first of them may lack its start. */
  List<String> lines() {
    return new String(tail, 0, length).lines().toList();
  }
}
