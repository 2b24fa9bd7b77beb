package org.rimebook.practice;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

/** What is in a folder, with gzip files unpacked. */
final class Folders {

  private Folders() {}

  static SortedMap<String, String> content(Path folder) throws IOException {
    SortedMap<String, String> content = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      files
          .filter(Files::isRegularFile)
          .forEach(file -> content.put(folder.relativize(file).toString(), text(file)));
    }
    return content;
  }

  private static String text(Path file) {
    try (InputStream raw = Files.newInputStream(file);
        InputStream plain = file.toString().endsWith(".gz") ? new GZIPInputStream(raw) : raw) {
      return new String(plain.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String[]> rows(String csv) {
    return csv.lines().skip(1).map(line -> line.split(",", -1)).toList();
  }
}
