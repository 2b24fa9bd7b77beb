package org.rimebook.record;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

/**
 * A file opened as text: unpacked when its first bytes say gzip, decoded by its byte order mark or
 * by what its first bytes can be. Bytes that aren't text become U+FFFD. A gzip file that breaks off
 * is read up to there.
 */
final class TextFile implements Closeable {

  private static final int BUFFER = 1 << 16;

  private final InputStream file;
  private final Reader reader;
  private final String words;
  private final SoftEnd unpacked;

  private TextFile(InputStream file, Reader reader, String words, SoftEnd unpacked) {
    this.file = file;
    this.reader = reader;
    this.words = words;
    this.unpacked = unpacked;
  }

  /** Opens a file. */
  static TextFile open(Path path) throws IOException {
    BufferedInputStream raw = new BufferedInputStream(Files.newInputStream(path), BUFFER);
    try {
      return over(raw);
    } catch (IOException e) {
      raw.close();
      throw e;
    }
  }

  private static TextFile over(BufferedInputStream raw) throws IOException {
    boolean gzip = startsWith(peek(raw, 2), 0x1f, 0x8b);
    SoftEnd unpacked = new SoftEnd(gzip ? unpack(raw) : raw);
    BufferedInputStream bytes = gzip ? new BufferedInputStream(unpacked, BUFFER) : raw;
    TextEncoding encoding = TextEncoding.of(peek(bytes, BUFFER));
    bytes.skipNBytes(encoding.markLength());
    Charset charset = encoding.charset();
    String words = charset.equals(StandardCharsets.ISO_8859_1) ? "Latin-1" : charset.name();
    return new TextFile(
        raw, new InputStreamReader(bytes, charset), words + (gzip ? ", gzip" : ""), unpacked);
  }

  private static InputStream unpack(InputStream raw) throws IOException {
    try {
      return new GZIPInputStream(raw, BUFFER);
    } catch (EOFException | ZipException e) {
      return InputStream.nullInputStream();
    }
  }

  private static byte[] peek(BufferedInputStream in, int length) throws IOException {
    in.mark(length);
    byte[] bytes = in.readNBytes(length);
    in.reset();
    return bytes;
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length >= 2 && (bytes[0] & 0xff) == first && (bytes[1] & 0xff) == second;
  }

  /** The text. */
  Reader reader() {
    return reader;
  }

  /** Encoding and packing in words; after reading also whether the file breaks off. */
  String words() {
    return words + (unpacked.broken ? " that breaks off" : "");
  }

  /** Whether an archive was found to break off. */
  boolean breaksOff() {
    return unpacked.broken;
  }

  @Override
  public void close() throws IOException {
    reader.close();
    file.close(); // the reader doesn't reach it where an archive couldn't be unpacked
  }

  /** Ends where an archive breaks off, so that what stands before it isn't lost. */
  private static final class SoftEnd extends FilterInputStream {

    private boolean broken;

    private SoftEnd(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
      if (broken) {
        return -1;
      }
      try {
        return super.read(bytes, offset, length);
      } catch (EOFException | ZipException e) {
        broken = true;
        return -1;
      }
    }
  }
}
