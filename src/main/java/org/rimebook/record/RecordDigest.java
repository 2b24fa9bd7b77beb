package org.rimebook.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.rimebook.station.Progress;
import org.rimebook.station.Sha256;

/** The digest by which a record is recognised, taken while the rows are read. */
final class RecordDigest {

  private static final int BUFFER = 1 << 17;

  private final CompletableFuture<Digests> digests;

  private RecordDigest(CompletableFuture<Digests> digests) {
    this.digests = digests;
  }

  /**
   * Digests in lower-case hexadecimal.
   *
   * @param record SHA-256 over each file's name, a zero byte and its bytes as stored
   * @param files SHA-256 of each file's bytes as stored
   */
  record Digests(String record, List<String> files) {}

  /** Starts on the files in the background; it ends early when the reading is called off. */
  static RecordDigest start(List<RecordFile> files, Progress progress) {
    return new RecordDigest(
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return of(files, progress);
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            }));
  }

  /** The digests. Waits for them. */
  Digests taken() throws IOException {
    try {
      return digests.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof UncheckedIOException unread) {
        throw unread.getCause();
      }
      throw e;
    }
  }

  /** Takes them at once. */
  static Digests of(List<RecordFile> files, Progress progress) throws IOException {
    MessageDigest digest = Sha256.start();
    List<String> ofFiles = new ArrayList<>();
    byte[] buffer = new byte[BUFFER];
    for (RecordFile file : files) {
      digest.update(file.name().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
      MessageDigest ofFile = Sha256.start();
      try (InputStream in = Files.newInputStream(file.path())) {
        int count = in.read(buffer);
        while (count >= 0 && !progress.cancelled()) {
          digest.update(buffer, 0, count);
          ofFile.update(buffer, 0, count);
          count = in.read(buffer);
        }
      }
      ofFiles.add(Sha256.hex(ofFile));
    }
    return new Digests(Sha256.hex(digest), ofFiles);
  }
}
