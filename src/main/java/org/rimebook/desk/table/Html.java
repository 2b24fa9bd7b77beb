package org.rimebook.desk.table;

import java.util.List;
import java.util.stream.Collectors;

/** Lines of a tooltip. */
final class Html {

  private Html() {}

  static String lines(List<String> lines) {
    return lines.stream()
        .map(line -> line.replace("&", "&amp;").replace("<", "&lt;"))
        .collect(Collectors.joining("<br>", "<html>", "</html>"));
  }
}
