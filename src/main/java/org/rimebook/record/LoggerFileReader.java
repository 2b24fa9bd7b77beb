package org.rimebook.record;

import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheet;

/** Reads the rows of one file after another. */
final class LoggerFileReader {

  private final StationSheet sheet;
  private final Wanted wanted;
  private final Rows rows;

  LoggerFileReader(StationSheet sheet, Wanted wanted, Rows rows) {
    this.sheet = sheet;
    this.wanted = wanted;
    this.rows = rows;
  }

  /** Reads a file by its plan, adding to the rows. */
  FileReading read(FilePlan plan, List<LogicalLine> head) throws IOException, InputException {
    int firstRow = rows.size();
    Attempt attempt = attempt(plan, head, false);
    if (!attempt.sound) {
      rows.truncate(firstRow);
      attempt = attempt(plan, head, true);
    }
    RowHandler handler = attempt.handler;
    if (attempt.cut) {
      handler.cut(attempt.breaksOff);
    }
    char decimal = attempt.numbers.decimal();
    String words =
        Dialect.words(plan.dialect().delimiter(), decimal)
            + ", "
            + attempt.words
            + ", "
            + plan.form().words()
            + notes(plan);
    return new FileReading(
        plan.file().name(),
        firstRow,
        rows.size(),
        handler.lines(),
        handler.ledger(),
        handler.joinedLines(),
        handler.unreadable(),
        words);
  }

  /** A file nothing of which is a row. */
  FileReading readNone(RecordFile file, List<LogicalLine> head) throws IOException {
    LineLedger ledger = new LineLedger(file.name());
    long lines = 0;
    String words;
    try (TextFile text = TextFile.open(file.path())) {
      LogicalLines all = new LogicalLines(text.reader(), Fields.ANY, LogicalLines.JOIN_NONE);
      for (var next = all.next(); next.isPresent(); next = all.next()) {
        LogicalLine line = next.get();
        lines = line.number();
        LineReason reason =
            line.isBlank()
                ? LineReason.BLANK
                : line.isComment() ? LineReason.COMMENT : LineReason.UNREADABLE;
        ledger.setAside(lines, lines, reason, "");
      }
      words = text.words();
    }
    String note = head.isEmpty() ? "empty file" : "no line of it is a row, " + words;
    return new FileReading(
        file.name(), rows.size(), rows.size(), lines, ledger, Map.of(), List.of(), note);
  }

  private String notes(FilePlan plan) {
    StringBuilder notes = new StringBuilder();
    if (!plan.headerFrom().isEmpty()) {
      notes.append(", no header: columns as in ").append(plan.headerFrom());
    }
    for (String column : wanted.values()) {
      if (ColumnNames.find(plan.dialect().names(), column).isEmpty()) {
        notes.append(", no column ").append(column);
      }
    }
    return notes.toString();
  }

  private Attempt attempt(FilePlan plan, List<LogicalLine> head, boolean guarded)
      throws IOException, InputException {
    ZoneOffset offset = sheet.utcOffset();
    NumberReader numbers = new NumberReader(sheet.layout().missing(), plan.dialect().decimal());
    OddLines oddLines = new OddLines(plan.file().name(), plan.dialect(), wanted, head);
    RowHandler handler = new RowHandler(rows, plan.form().reader(offset), numbers, oddLines);
    Attempt attempt = new Attempt(handler, numbers);
    try (TextFile text = TextFile.open(plan.file().path())) {
      LastCharacter reader = new LastCharacter(text.reader());
      CsvText.of(reader, plan.dialect(), guarded).read(handler);
      attempt.words = text.words();
      attempt.breaksOff = text.breaksOff();
      attempt.cut = reader.last != '\n' && reader.last != '\r';
      attempt.sound = guarded || !handler.joinsLines();
    } catch (CsvParseException e) {
      if (guarded) {
        throw e;
      }
      attempt.sound = false; // a quote that doesn't stand right: read again with quotes mended
    }
    return attempt;
  }

  /** One way through a file. */
  private static final class Attempt {
    private final RowHandler handler;
    private final NumberReader numbers;
    private boolean sound;
    private boolean cut;
    private boolean breaksOff;
    private String words = "";

    private Attempt(RowHandler handler, NumberReader numbers) {
      this.handler = handler;
      this.numbers = numbers;
    }
  }

  /** Remembers the last character it gave. */
  private static final class LastCharacter extends FilterReader {

    private char last = '\n';

    private LastCharacter(Reader in) {
      super(in);
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
      int count = super.read(buffer, offset, length);
      if (count > 0) {
        last = buffer[offset + count - 1];
      }
      return count;
    }
  }
}
