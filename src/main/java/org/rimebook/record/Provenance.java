package org.rimebook.record;

import java.util.List;
import org.rimebook.station.Problem;

/**
 * Where the rows of a record came from.
 *
 * @param files account of every file, in the order they were joined (by name)
 * @param fileOfRow index into {@code files} of each row
 * @param lineOfRow line of each row in its file, 1-based
 * @param digest digests of the files, in the order of {@code files}
 */
public record Provenance(
    List<FileAccount> files, IntSequence fileOfRow, IntSequence lineOfRow, RecordDigest digest) {

  public Provenance {
    files = List.copyOf(files);
  }

  /** A record that was never in files. */
  public Provenance(
      List<FileAccount> files, IntSequence fileOfRow, IntSequence lineOfRow, String sha256) {
    this(files, fileOfRow, lineOfRow, RecordDigest.known(sha256));
  }

  /** The notes on every file, in the order of the files. */
  public List<Problem> notes() {
    return files.stream().flatMap(file -> file.notes().stream()).toList();
  }
}
