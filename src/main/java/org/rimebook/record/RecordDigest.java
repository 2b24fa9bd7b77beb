package org.rimebook.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** The digest by which a record is recognised. */
final class RecordDigest {

  private static final int BUFFER = 1 << 17;

  private final FutureTask<String> task;

  private RecordDigest(FutureTask<String> task) {
    this.task = task;
  }

  /** Begins to compute the digest beside what the caller does next. */
  static RecordDigest start(List<RecordFile> files) {
    RecordDigest digest = new RecordDigest(new FutureTask<>(() -> sha256(files)));
    Thread thread = new Thread(digest.task, "record-digest");
    thread.setDaemon(true);
    thread.start();
    return digest;
  }

  /** The digest, once it is there. */
  String await() throws IOException {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while reading the record");
    } catch (ExecutionException e) {
      throw new IOException(e.getCause().getMessage(), e.getCause());
    }
  }

  /** SHA-256 over each file's name, a zero byte and its bytes as stored; lower-case hexadecimal. */
  private static String sha256(List<RecordFile> files) throws IOException {
    MessageDigest digest = newDigest();
    byte[] buffer = new byte[BUFFER];
    for (RecordFile file : files) {
      digest.update(file.name().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
      try (InputStream in = Files.newInputStream(file.path())) {
        for (int count = in.read(buffer); count >= 0; count = in.read(buffer)) {
          digest.update(buffer, 0, count);
        }
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest newDigest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
