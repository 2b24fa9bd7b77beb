package org.rimebook.export;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes a set of files into a folder so that each is there whole or not at all: every file is
 * first written beside its place under a temporary name, and all are moved only once all are
 * written.
 */
public final class OutputFolder {

  private OutputFolder() {}

  /**
   * Writes files.
   *
   * @param folder where to write; made when absent
   * @param bytesByName what each file is to hold; a file of that name is replaced
   * @throws IOException when the folder can't be written to
   */
  public static void write(Path folder, Map<String, byte[]> bytesByName) throws IOException {
    Files.createDirectories(folder);
    Map<Path, Path> written = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, byte[]> file : bytesByName.entrySet()) {
        Path temporary = folder.resolve("." + file.getKey() + ".part");
        written.put(temporary, target(folder, file.getKey()));
        Files.write(temporary, file.getValue());
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

  /**
   * Writes one file.
   *
   * @param file its path; its folder is made when absent
   * @param bytes what it is to hold
   * @throws IOException when it can't be written
   */
  public static void write(Path file, byte[] bytes) throws IOException {
    Path absolute = file.toAbsolutePath();
    if (absolute.getFileName() == null) {
      throw new FileSystemException(file.toString(), null, "it isn't the name of a file");
    }
    write(absolute.getParent(), Map.of(absolute.getFileName().toString(), bytes));
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
