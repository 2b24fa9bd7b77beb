package org.rimebook.record;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The first lines of a file, from which its layout is found out. */
final class Head {

  private static final int CHARACTERS = 1 << 14;

  private Head() {}

  /** The whole lines among the first characters. */
  static List<LogicalLine> of(RecordFile file) throws IOException {
    char[] start = new char[CHARACTERS];
    int length = 0;
    try (TextFile text = TextFile.open(file.path())) {
      int count = 0;
      while (count >= 0 && length < CHARACTERS) {
        length += count;
        count = text.reader().read(start, length, CHARACTERS - length);
      }
    }
    List<LogicalLine> lines = lines(new String(start, 0, length));
    boolean cut = length == CHARACTERS && lines.size() > 1;
    return cut ? lines.subList(0, lines.size() - 1) : lines;
  }

  private static List<LogicalLine> lines(String text) throws IOException {
    LogicalLines logical = new LogicalLines(new StringReader(text), Fields.ANY, 0);
    List<LogicalLine> lines = new ArrayList<>();
    for (Optional<LogicalLine> next = logical.next(); next.isPresent(); next = logical.next()) {
      lines.add(next.get());
    }
    return lines;
  }
}
