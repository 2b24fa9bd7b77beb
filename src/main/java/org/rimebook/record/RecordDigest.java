package org.rimebook.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.rimebook.station.Progress;
import org.rimebook.station.Sha256;

/** The digest by which a record is recognised, taken while the rows are read. */
final class RecordDigest {

  private static final int BUFFER = 1 << 17;

  private final CompletableFuture<String> sha256;

  private RecordDigest(CompletableFuture<String> sha256) {
    this.sha256 = sha256;
  }

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

  /**
   * SHA-256 over each file's name, a zero byte and its bytes as stored; lower-case hexadecimal.
   * Waits for it.
   */
  String sha256() throws IOException {
    try {
      return sha256.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof UncheckedIOException unread) {
        throw unread.getCause();
      }
      throw e;
    }
  }

  private static String of(List<RecordFile> files, Progress progress) throws IOException {
    MessageDigest digest = Sha256.start();
    byte[] buffer = new byte[BUFFER];
    for (RecordFile file : files) {
      digest.update(file.name().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
      try (InputStream in = Files.newInputStream(file.path())) {
        int count = in.read(buffer);
        while (count >= 0 && !progress.cancelled()) {
          digest.update(buffer, 0, count);
          count = in.read(buffer);
        }
      }
    }
    return Sha256.hex(digest);
  }
}
