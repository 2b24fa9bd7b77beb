package org.rimebook.record;

import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.IOException;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;
import org.rimebook.station.StationSheet;

/** Reads the rows of one file after another. */
final class LoggerFileReader {

  private final StationSheet sheet;
  private final Wanted wanted;
  private final Rows rows;
  private final Progress progress;

  LoggerFileReader(StationSheet sheet, Wanted wanted, Rows rows, Progress progress) {
    this.progress = progress;
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
      handler.cut(attempt.cutInField);
    }
    char decimal = attempt.numbers.decimal();
    String words =
        Dialect.words(plan.dialect().delimiter(), decimal)
            + ", "
            + attempt.words
            + ", "
            + plan.form().words()
            + headerWords(plan);
    return new FileReading(
        plan.file().name(),
        firstRow,
        rows.size(),
        handler.lines(),
        handler.ledger(),
        handler.joinedLines(),
        handler.unreadable(),
        words,
        FileNotes.ofColumns(plan.file().name(), plan.dialect(), wanted));
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
    List<Problem> suspect =
        DelimiterSuspect.of(file, head, wanted, sheet.layout()).stream().toList();
    String note = head.isEmpty() ? "empty file" : "no line of it is a row, " + words;
    return new FileReading(
        file.name(), rows.size(), rows.size(), lines, ledger, Map.of(), List.of(), note, suspect);
  }

  private static String headerWords(FilePlan plan) {
    return plan.headerFrom().isEmpty() ? "" : ", no header: columns as in " + plan.headerFrom();
  }

  private Attempt attempt(FilePlan plan, List<LogicalLine> head, boolean guarded)
      throws IOException, InputException {
    ZoneOffset offset = sheet.utcOffset();
    NumberReader numbers = new NumberReader(sheet.layout().missing(), plan.dialect().decimal());
    OddLines oddLines = new OddLines(plan.file().name(), plan.dialect(), wanted, head);
    RowHandler handler =
        new RowHandler(rows, plan.form().reader(offset), numbers, oddLines, progress);
    Attempt attempt = new Attempt(handler, numbers);
    try (TextFile text = TextFile.open(plan.file().path())) {
      TailReader reader = new TailReader(text.reader());
      CsvText.of(reader, plan.dialect(), guarded).read(handler);
      attempt.words = text.words();
      attempt.cut = reader.endsInLine();
      char delimiter = plan.dialect().delimiter();
      attempt.cutInField =
          text.breaksOff()
              || (attempt.cut
                  && handler.endsInUsedField()
                  && CutField.atEndOf(reader.lines(), delimiter));
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
    private boolean cutInField;
    private String words = "";

    private Attempt(RowHandler handler, NumberReader numbers) {
      this.handler = handler;
      this.numbers = numbers;
    }
  }
}
