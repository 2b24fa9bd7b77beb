package org.rimebook.notebook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.ZoneOffset;
import java.util.List;

/** The notebook's file: only ever appended to, and absent until the first entry. */
public final class NotebookLog {

  private NotebookLog() {}

  /**
   * The notebook in a file, read as UTF-8; bytes that aren't UTF-8 don't stop it.
   *
   * @param file the file; a notebook nobody has written in when it is absent
   * @throws IOException when the file is there and can't be read
   */
  public static Notebook read(Path file) throws IOException {
    if (Files.notExists(file)) {
      return Notebook.EMPTY;
    }
    String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    return NotebookReader.read(text, file.getFileName().toString());
  }

  /**
   * Appends entries in one go and returns once they are on disk. After a line that was cut off they
   * start a line of their own, so that a good entry never joins a broken one; entries that belong
   * together stay together when two programs append at a time.
   *
   * @param file the file, made when absent
   * @param entries the entries
   * @param offset the station's offset, in which times are written
   * @throws IOException when the entries may not be on disk whole
   */
  public static void append(Path file, List<Entry> entries, ZoneOffset offset) throws IOException {
    StringBuilder lines = new StringBuilder();
    entries.forEach(entry -> lines.append(EntryWriter.line(entry, offset)).append('\n'));
    String whole = endsInsideALine(file) ? "\n" + lines : lines.toString();
    ByteBuffer bytes = ByteBuffer.wrap(whole.getBytes(StandardCharsets.UTF_8));
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  private static boolean endsInsideALine(Path file) throws IOException {
    if (Files.notExists(file)) {
      return false;
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      ByteBuffer last = ByteBuffer.allocate(1);
      return channel.size() > 0
          && channel.read(last, channel.size() - 1) == 1
          && last.get(0) != '\n';
    }
  }
}
