package org.rimebook.record;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;

/**
 * How a text is encoded, told from its first bytes: by its byte order mark; else UTF-16 when every
 * other byte is mostly zero; else UTF-8 when it can be that; else Latin-1.
 *
 * @param charset the encoding
 * @param markLength length of the byte order mark [bytes], 0 when there is none
 */
record TextEncoding(Charset charset, int markLength) {

  /** The encoding of a text that starts with these bytes. */
  static TextEncoding of(byte[] start) {
    if (has(start, 0xef, 0xbb, 0xbf)) {
      return new TextEncoding(StandardCharsets.UTF_8, 3);
    }
    if (has(start, 0xff, 0xfe)) {
      return new TextEncoding(StandardCharsets.UTF_16LE, 2);
    }
    if (has(start, 0xfe, 0xff)) {
      return new TextEncoding(StandardCharsets.UTF_16BE, 2);
    }
    if (zeros(start, 1) && !zeros(start, 0)) {
      return new TextEncoding(StandardCharsets.UTF_16LE, 0);
    }
    if (zeros(start, 0) && !zeros(start, 1)) {
      return new TextEncoding(StandardCharsets.UTF_16BE, 0);
    }
    boolean utf8 = canBeUtf8(start);
    return new TextEncoding(utf8 ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1, 0);
  }

  private static boolean has(byte[] start, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= start.length || (start[i] & 0xff) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  /** Whether at least nine in ten of every other byte are zero. */
  private static boolean zeros(byte[] start, int first) {
    int zeros = 0;
    int seen = 0;
    for (int i = first; i < start.length; i += 2) {
      zeros += start[i] == 0 ? 1 : 0;
      seen++;
    }
    return seen > 4 && zeros * 10 >= seen * 9;
  }

  /** A character cut at the end of the bytes is no fault; NUL runs and the like aren't either. */
  private static boolean canBeUtf8(byte[] start) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CharBuffer text = CharBuffer.allocate(start.length + 1);
    return !decoder.decode(ByteBuffer.wrap(start), text, false).isError();
  }
}
