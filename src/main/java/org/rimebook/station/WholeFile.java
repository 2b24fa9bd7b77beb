package org.rimebook.station;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file so that it is there whole or as it was. */
public final class WholeFile {

  private WholeFile() {}

  /** The name a file has until it is whole. */
  public static Path unfinished(Path file) {
    return file.resolveSibling("." + file.getFileName() + ".part");
  }

  /**
   * Writes a file.
   *
   * @param file the file, in a folder that is there; one of that name is replaced
   * @param bytes what it is to hold
   * @throws IOException when it can't be written; it is then as it was
   */
  public static void write(Path file, byte[] bytes) throws IOException {
    Path temporary = unfinished(file);
    try {
      Files.write(temporary, bytes);
      move(temporary, file);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }

  /** Puts a finished file in its place. */
  public static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
