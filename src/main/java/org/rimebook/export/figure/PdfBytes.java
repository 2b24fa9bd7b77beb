package org.rimebook.export.figure;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.rimebook.station.Sha256;

/**
 * A PDF document as bytes that depend on its content alone: an identifier made of a digest, no
 * time, and streams that aren't compressed, since one machine's compression isn't another's.
 */
public final class PdfBytes {

  private static final int ID_BYTES = 16;

  private PdfBytes() {}

  /**
   * The bytes of a document.
   *
   * @param document the document, changed by this and not to be used after it
   * @param identity what tells it from other documents; the same text gives the same identifier
   * @throws IOException when the document is damaged
   */
  public static byte[] of(PDDocument document, String identity) throws IOException {
    String digest = Sha256.hex(identity.getBytes(StandardCharsets.UTF_8));
    document.setDocumentId(Long.parseUnsignedLong(digest.substring(0, ID_BYTES), 16));
    ByteArrayOutputStream first = new ByteArrayOutputStream();
    // Fonts are cut down to what is used as the document is saved, so it is saved before that.
    document.save(first, CompressParameters.NO_COMPRESSION);
    try (PDDocument again = Loader.loadPDF(first.toByteArray())) {
      uncompress(again.getDocument().getTrailer());
      identify(again, digest);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      again.save(bytes, CompressParameters.NO_COMPRESSION);
      return bytes.toByteArray();
    }
  }

  private static void identify(PDDocument document, String digest) {
    byte[] id = new byte[ID_BYTES];
    for (int i = 0; i < ID_BYTES; i++) {
      id[i] = (byte) Integer.parseInt(digest.substring(2 * i, 2 * i + 2), 16);
    }
    COSArray pair = new COSArray();
    pair.add(new COSString(id));
    pair.add(new COSString(id));
    document.getDocument().setDocumentID(pair);
  }

  private static void uncompress(COSBase root) throws IOException {
    Set<COSBase> met = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<COSBase> left = new ArrayDeque<>();
    left.add(root);
    while (!left.isEmpty()) {
      COSBase next = left.removeFirst();
      COSBase object = next instanceof COSObject reference ? reference.getObject() : next;
      if (object == null || !met.add(object)) {
        continue;
      }
      if (object instanceof COSStream stream) {
        uncompress(stream);
      }
      if (object instanceof COSDictionary dictionary) {
        left.addAll(dictionary.getValues());
      } else if (object instanceof COSArray array) {
        array.forEach(left::add);
      }
    }
  }

  private static void uncompress(COSStream stream) throws IOException {
    if (COSName.FLATE_DECODE.equals(stream.getFilters())) {
      byte[] plain = decoded(stream);
      stream.removeItem(COSName.FILTER);
      stream.removeItem(COSName.DECODE_PARMS);
      try (OutputStream out = stream.createOutputStream()) {
        out.write(plain);
      }
    }
  }

  private static byte[] decoded(COSStream stream) throws IOException {
    try (InputStream in = stream.createInputStream()) {
      return in.readAllBytes();
    }
  }
}
