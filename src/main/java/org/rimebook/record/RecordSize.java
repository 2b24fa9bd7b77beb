package org.rimebook.record;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;

/**
 * How large a record is before anything of it is read.
 *
 * @param textBytes bytes of the text of its files, taken as {@value #PACKED} times as many where a
 *     file's name says gzip
 */
public record RecordSize(long textBytes) {

  /** What gzip makes of a logger's readings: 4 to 8 times smaller (own measurement). */
  private static final int PACKED = 8;

  static RecordSize of(List<RecordFile> files) throws IOException {
    long text = 0;
    for (RecordFile file : files) {
      long bytes = Files.size(file.path());
      text += file.name().endsWith(".gz") ? PACKED * bytes : bytes;
    }
    return new RecordSize(text);
  }
}
