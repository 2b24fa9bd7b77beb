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
 * @param fileSha256 digest of each file's bytes as stored, in the order of {@code files}; empty for
 *     a record that was never in files
 */
public record Provenance(
    List<FileAccount> files,
    IntSequence fileOfRow,
    IntSequence lineOfRow,
    String sha256,
    List<String> fileSha256) {

  public Provenance {
    files = List.copyOf(files);
    fileSha256 = List.copyOf(fileSha256);
  }

  /** A record that was never in files. */
  public Provenance(
      List<FileAccount> files, IntSequence fileOfRow, IntSequence lineOfRow, String sha256) {
    this(files, fileOfRow, lineOfRow, sha256, List.of());
  }

  /** The notes on every file, in the order of the files. */
  public List<Problem> notes() {
    return files.stream().flatMap(file -> file.notes().stream()).toList();
  }
}
