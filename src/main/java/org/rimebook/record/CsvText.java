package org.rimebook.record;

import de.siegmar.fastcsv.reader.CsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;

/** The fields of a text, handed to a handler record by record. */
final class CsvText {

  private static final int LONGEST_FIELD = 1 << 20;

  private final Reader text;
  private final Dialect dialect;
  private final boolean guarded;

  private CsvText(Reader text, Dialect dialect, boolean guarded) {
    this.text = text;
    this.dialect = dialect;
    this.guarded = guarded;
  }

  /**
   * A text to be read.
   *
   * @param guarded whether quotes are made good first, at some cost; without it a quote that is
   *     never closed swallows what follows
   */
  static CsvText of(Reader text, Dialect dialect, boolean guarded) {
    return new CsvText(text, dialect, guarded);
  }

  /**
   * Reads to the end.
   *
   * @param handler takes the records; builds none
   */
  void read(CsvCallbackHandler<Object> handler) throws IOException {
    boolean rewritten = guarded || dialect.delimiter() == Fields.BLANKS;
    try (CsvReader<Object> csv =
        CsvReader.builder()
            .fieldSeparator(dialect.delimiter())
            .skipEmptyLines(false)
            .maxBufferSize(LONGEST_FIELD)
            .build(handler, rewritten ? new MendedText(text, dialect) : text)) {
      csv.forEach(nothing -> {});
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
