package org.rimebook.season;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;

/** Bytes of the text files of a season folder. */
public final class Utf8 {

  private Utf8() {}

  /** Text of UTF-8 bytes; a byte order mark is the reader's to pass over. */
  public static String text(byte[] bytes, String file) throws InputException {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new InputException(
          Problem.inFile(file, "isn't UTF-8 text", "Save it again with the encoding UTF-8"));
    }
  }

  /** UTF-8 bytes of a text. */
  public static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Text of UTF-8 bytes; damaged bytes become a replacement mark and spoil only their line. */
  public static String lenient(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
