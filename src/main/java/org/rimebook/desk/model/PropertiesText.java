package org.rimebook.desk.model;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Texts by name in a properties file: UTF-8, sorted, written whole or not at all. */
final class PropertiesText {

  private static final String FORMAT = "format";
  private static final String VERSION = "rimebook-memory/1";

  private PropertiesText() {}

  /**
   * Reads a file; empty when there is none.
   *
   * @throws IOException when it isn't such a file, whole
   */
  static Map<String, String> read(Path file) throws IOException {
    Properties properties = new Properties();
    try (Reader reader = new StringReader(Files.readString(file, StandardCharsets.UTF_8))) {
      properties.load(reader);
    } catch (NoSuchFileException e) {
      return Map.of();
    } catch (IllegalArgumentException e) {
      throw new IOException("it holds a malformed escape", e);
    }
    if (!VERSION.equals(properties.remove(FORMAT))) {
      throw new IOException("it doesn't say " + FORMAT + "=" + VERSION);
    }
    Map<String, String> texts = new TreeMap<>();
    properties.stringPropertyNames().forEach(n -> texts.put(n, properties.getProperty(n)));
    return texts;
  }

  /** Writes a file, and the folder it stands in when that is absent. */
  static void write(Path file, Map<String, String> texts) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    Path part = file.resolveSibling("." + file.getFileName() + ".part");
    try {
      Files.writeString(part, text(texts), StandardCharsets.UTF_8);
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Keeps a file that can't be read aside, and says so. */
  static Notice damaged(Path file, IOException fault) {
    Path aside = file.resolveSibling(file.getFileName() + ".damaged");
    String kept;
    try {
      Files.copy(file, aside, StandardCopyOption.REPLACE_EXISTING);
      kept = "It is kept as " + aside.getFileName();
    } catch (IOException e) {
      kept = "It couldn't be kept aside either";
    }
    return new Notice(
        Notice.Weight.NOTE,
        file
            + ", which remembers windows and recent seasons, can't be read ("
            + fault.getMessage()
            + "). "
            + kept
            + ", and a new one is begun; seasons and notebooks aren't touched by this");
  }

  private static String text(Map<String, String> texts) {
    Properties properties = new Properties();
    properties.putAll(texts);
    properties.setProperty(FORMAT, VERSION);
    StringWriter lines = new StringWriter();
    try {
      properties.store(lines, null);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to a string can't fail", e);
    }
    // Each property is one line; the line that isn't one is a comment with the time.
    return lines
        .toString()
        .lines()
        .filter(line -> !line.startsWith("#"))
        .sorted()
        .collect(Collectors.joining("\n", "", "\n"));
  }
}
