package org.rimebook.launch;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * The file in which the classes a window needed are stored, ready for the next start, by the
 * virtual machine's class data sharing (JEP 350). One file for each program file; when that or the
 * virtual machine changes, the classes are stored anew.
 */
final class StoredClasses {

  private static final String PART = ".part";

  private final Path folder;
  private final String program;
  private final Path file;
  private final Path part;

  private StoredClasses(Path folder, String program, String state) {
    this.folder = folder;
    this.program = program;
    file = folder.resolve(program + state + ".jsa");
    part = folder.resolve(program + ProcessHandle.current().pid() + PART);
  }

  /**
   * The file for a program.
   *
   * @param folder where such files lie; it needn't exist
   * @param jar the program
   * @param machine name and version of the virtual machine
   * @throws IOException when there is no such program
   */
  static StoredClasses of(Path folder, Path jar, String machine) throws IOException {
    Path whole = jar.toAbsolutePath().normalize();
    BasicFileAttributes attributes = Files.readAttributes(whole, BasicFileAttributes.class);
    long changed = attributes.lastModifiedTime().toMillis() * 31 + attributes.size();
    return new StoredClasses(
        folder,
        "classes-" + Integer.toHexString(whole.toString().hashCode()) + "-",
        Long.toHexString(changed * 31 + machine.hashCode()));
  }

  /** Whether the classes have been stored. */
  boolean present() {
    return Files.isRegularFile(file);
  }

  /** Where they are. */
  Path file() {
    return file;
  }

  /**
   * Where a start may store them until they are whole.
   *
   * @throws IOException when the folder can't be made
   */
  Path part() throws IOException {
    Files.createDirectories(folder);
    return part;
  }

  /** Keeps what a start has stored and drops what was stored for this program before. */
  void keep() throws IOException {
    if (!Files.isRegularFile(part)) {
      return;
    }
    Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    try (DirectoryStream<Path> others = Files.newDirectoryStream(folder, program + "*")) {
      for (Path other : others) {
        if (!other.equals(file)) {
          Files.deleteIfExists(other);
        }
      }
    }
  }

  /** Drops what a start has begun to store. */
  void drop() throws IOException {
    Files.deleteIfExists(part);
  }
}
