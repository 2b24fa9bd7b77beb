package org.rimebook.record;

import java.util.ArrayList;
import java.util.List;

/** Cuts single lines into fields, for finding out how a file is written. */
final class Fields {

  /** The delimiter that stands for runs of blanks. */
  static final char BLANKS = ' ';

  /** Stands for any of the common delimiters. */
  static final char ANY = '\0';

  private Fields() {}

  /** The fields of a line, without blanks around them; quotes that don't stand right are text. */
  static List<String> split(String line, char delimiter) {
    String text = delimiter == BLANKS ? line.strip().replaceAll("[ \t]+", " ") : line;
    boolean quoted = text.indexOf('"') >= 0 && Quotes.of(text, delimiter) == Quotes.CLOSED;
    List<String> fields = new ArrayList<>();
    int start = 0;
    while (start <= text.length()) {
      int end;
      if (quoted && start < text.length() && text.charAt(start) == '"') {
        int close = Quotes.closing(text, start + 1);
        fields.add(text.substring(start + 1, close).replace("\"\"", "\"").strip());
        end = close + 1;
      } else {
        int next = text.indexOf(delimiter, start);
        end = next < 0 ? text.length() : next;
        fields.add(unquoted(text.substring(start, end).strip()));
      }
      start = end + 1;
    }
    return fields;
  }

  /** A field between quotes that blanks keep from the delimiter. */
  private static String unquoted(String field) {
    boolean quoted = field.length() > 1 && field.startsWith("\"") && field.endsWith("\"");
    return quoted ? field.substring(1, field.length() - 1) : field;
  }

  /** The fields up to the last that isn't empty. */
  static List<String> withoutEmptyTail(List<String> fields) {
    int size = fields.size();
    while (size > 0 && fields.get(size - 1).isEmpty()) {
      size--;
    }
    return fields.subList(0, size);
  }
}
