package org.rimebook.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes a set of text files into a folder so that each is there whole or not at all: every file is
 * first written beside its place under a temporary name, and all are moved only once all are
 * written.
 */
public final class OutputFolder {

  private OutputFolder() {}

  /**
   * Writes the files.
   *
   * @param folder where to; made when absent
   * @param textByName the text of each by its name, in the order in which they are put into place
   * @throws IOException when the folder can't be written to; then every file is as it was
   */
  public static void write(Path folder, Map<String, String> textByName) throws IOException {
    Files.createDirectories(folder);
    Map<Path, Path> written = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, String> file : textByName.entrySet()) {
        Path temporary = folder.resolve("." + file.getKey() + ".part");
        written.put(temporary, target(folder, file.getKey()));
        Files.writeString(temporary, file.getValue(), StandardCharsets.UTF_8);
      }
      for (Map.Entry<Path, Path> move : written.entrySet()) {
        move(move.getKey(), move.getValue());
      }
    } finally {
      for (Path temporary : written.keySet()) {
        Files.deleteIfExists(temporary);
      }
    }
  }

  private static Path target(Path folder, String name) throws IOException {
    Path target = folder.resolve(name);
    if (Files.isDirectory(target)) {
      throw new FileSystemException(target.toString(), null, "a folder of that name is in the way");
    }
    return target;
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
