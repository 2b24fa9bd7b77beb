package org.rimebook.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/**
 * Finds the files of a record. A pattern that ends in {@code .csv} also takes the same with {@code
 * .gz}; hidden files aren't taken. Files are ordered by name, code unit by code unit.
 */
final class RecordFiles {

  private static final int NAMES_SHOWN = 8;

  private RecordFiles() {}

  /**
   * The files that match any of the patterns.
   *
   * @throws InputException when a pattern is malformed or none matches a file
   */
  static List<RecordFile> find(Path folder, List<String> patterns)
      throws InputException, IOException {
    List<RecordFile> found = matching(folder, patterns);
    if (found.isEmpty()) {
      throw new InputException(
          Problem.inFile(
              "station.json",
              "no file matches record.files " + String.join(", ", patterns) + "; " + there(folder),
              "Put the logger's files into records, or name them in record.files"));
    }
    return found;
  }

  /** The files that match any of the patterns, perhaps none. */
  static List<RecordFile> matching(Path folder, List<String> patterns)
      throws InputException, IOException {
    List<PathMatcher> matchers = new ArrayList<>();
    int depth = 1;
    for (String pattern : patterns) {
      matchers.add(matcher(folder, pattern));
      if (pattern.endsWith(".csv")) {
        matchers.add(matcher(folder, pattern + ".gz"));
      }
      int segments = pattern.contains("**") ? Integer.MAX_VALUE : pattern.split("/").length;
      depth = Math.max(depth, segments);
    }
    try (Stream<Path> walk = Files.walk(folder, depth, FileVisitOption.FOLLOW_LINKS)) {
      return walk.filter(path -> !hidden(path))
          .filter(path -> matches(matchers, folder.relativize(path)))
          .filter(Files::isRegularFile)
          .map(path -> new RecordFile(slashed(folder.relativize(path)), path))
          .sorted(Comparator.comparing(RecordFile::name))
          .toList();
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static PathMatcher matcher(Path folder, String pattern) throws InputException {
    try {
      return folder.getFileSystem().getPathMatcher("glob:" + pattern);
    } catch (PatternSyntaxException e) {
      throw new InputException(
          Problem.inFile(
              "station.json",
              "record.files holds \"" + pattern + "\": " + e.getDescription(),
              "Write a pattern like \"records/*.csv\""));
    }
  }

  private static boolean matches(List<PathMatcher> matchers, Path relative) {
    return matchers.stream().anyMatch(matcher -> matcher.matches(relative));
  }

  private static boolean hidden(Path path) {
    Path name = path.getFileName();
    return name != null && name.toString().startsWith(".");
  }

  private static String slashed(Path relative) {
    List<String> names = new ArrayList<>();
    relative.forEach(name -> names.add(name.toString()));
    return String.join("/", names);
  }

  private static String there(Path folder) throws IOException {
    Path records = folder.resolve("records");
    boolean inRecords = Files.isDirectory(records);
    String place = inRecords ? "records" : "there is no folder records; the season folder";
    try (Stream<Path> list = Files.list(inRecords ? records : folder)) {
      List<String> names = list.map(path -> path.getFileName().toString()).sorted().toList();
      if (names.isEmpty()) {
        return place + " is empty";
      }
      String shown = names.stream().limit(NAMES_SHOWN).collect(Collectors.joining(", "));
      int more = names.size() - NAMES_SHOWN;
      return place + " holds " + shown + (more > 0 ? " and " + more + " more" : "");
    }
  }
}
