package org.rimebook.record;

import java.util.List;
import org.rimebook.station.Problem;

/**
 * Where the rows of a record came from.
 *
 * @param files account of every file, in the order they were joined (by name)
 * @param fileOfRow index into {@code files} of each row
 * @param lineOfRow line of each row in its file, 1-based
 * @param sha256 digest of the record: SHA-256 over each file's name, a zero byte and its bytes as
 *     stored, in the order of {@code files}; lower-case hexadecimal
 */
public record Provenance(
    List<FileAccount> files, IntSequence fileOfRow, IntSequence lineOfRow, String sha256) {

  public Provenance {
    files = List.copyOf(files);
  }

  /** The notes on every file, in the order of the files. */
  public List<Problem> notes() {
    return files.stream().flatMap(file -> file.notes().stream()).toList();
  }
}
