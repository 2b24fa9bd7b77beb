package org.rimebook.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.security.MessageDigest;
import java.util.List;
import org.rimebook.station.Sha256;

/** The digest by which a record is recognised. */
final class RecordDigest {

  private static final int BUFFER = 1 << 17;

  private RecordDigest() {}

  /** SHA-256 over each file's name, a zero byte and its bytes as stored; lower-case hexadecimal. */
  static String sha256(List<RecordFile> files) throws IOException {
    MessageDigest digest = Sha256.start();
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
    return Sha256.hex(digest);
  }
}
