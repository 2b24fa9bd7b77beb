package org.rimebook.architecture.wrong.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Reads, as a stage may, and writes, as it mustn't. */
public final class WritesTheRecord {

  private WritesTheRecord() {}

  /** Reads one byte. */
  public static int reads(Path file) throws IOException {
    try (var stream = Files.newInputStream(file)) {
      return stream.read();
    }
  }

  /** Writes in every way the rule names. */
  public static void writes(Path file, ByteBuffer bytes) throws IOException {
    Files.writeString(file, "level");
    Files.newOutputStream(file).close();
    Files.move(file, file.resolveSibling("moved.csv"));
    Files.deleteIfExists(file);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.APPEND)) {
      channel.write(bytes);
    }
  }
}
