package org.rimebook.architecture;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toList;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The project's own files, read from the directory the build runs in. */
final class Documents {

  private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");
  private static final Pattern FIRST_CELL = Pattern.compile("(?m)^\\| `([^`]+)` \\|");

  private Documents() {}

  static String text(Path file) throws IOException {
    return Files.readString(file);
  }

  /** The files or directories directly in one directory, by name. */
  static List<Path> in(Path directory) throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.sorted().toList();
    }
  }

  /** Every name between backquotes. */
  static List<String> quoted(String text) {
    return first(QUOTED, text);
  }

  /** The first cells of the table under one heading, in order. */
  static List<String> firstCells(String text, String heading) {
    String section = text.split("(?m)^## " + heading + "$")[1].split("(?m)^## ")[0];
    return first(FIRST_CELL, section);
  }

  /** The simple names of all test classes, which are those the build runs. */
  static TreeSet<String> testClasses() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.matches(".*(Test|Properties)\\.java"))
          .map(name -> name.substring(0, name.length() - ".java".length()))
          .collect(toCollection(TreeSet::new));
    }
  }

  private static List<String> first(Pattern pattern, String text) {
    return pattern
        .matcher(text)
        .results()
        .map((MatchResult found) -> found.group(1))
        .collect(toList());
  }
}
