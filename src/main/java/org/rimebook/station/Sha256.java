package org.rimebook.station;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 digests in lower-case hexadecimal. */
public final class Sha256 {

  private Sha256() {}

  /** A digest to be fed piece by piece. */
  public static MessageDigest start() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }

  /** The digest of what was fed. */
  public static String hex(MessageDigest fed) {
    return HexFormat.of().formatHex(fed.digest());
  }

  /** The digest of bytes. */
  public static String hex(byte[] bytes) {
    MessageDigest digest = start();
    digest.update(bytes);
    return hex(digest);
  }
}
