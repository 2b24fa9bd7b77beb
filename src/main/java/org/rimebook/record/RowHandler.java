package org.rimebook.record;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rimebook.station.Progress;

/** Turns the records of one file into rows, and keeps account of those that make none. */
final class RowHandler extends AbstractBaseCsvCallbackHandler<Object> {

  /** Records between two words on progress: some milliseconds. */
  private static final int PROGRESS_RECORDS = 1 << 14;

  private final Rows rows;
  private final StampReader stamps;
  private final NumberReader numbers;
  private final OddLines oddLines;
  private final Progress progress;
  private final LineLedger ledger;
  private final long lastHeadLine;
  private final Map<Long, Long> joinedLines = new HashMap<>();
  private final List<FileAccount.FieldNote> unreadable = new ArrayList<>();

  private final double[] row;
  private final List<String> texts = new ArrayList<>();
  private final List<FileAccount.FieldNote> pending = new ArrayList<>();
  private ColumnMap columns;
  private int[] valueOfField;
  private int wantedFields;
  private int fields;
  private long line;
  private long moreLines;
  private int missing;
  private long stampMs;
  private boolean extra;
  private boolean blank;
  private boolean comment;
  private boolean garbled;
  private long records;
  private long linesSeen;
  private long lastRecordLine;
  private boolean joinsLines;
  private boolean lastIsOdd;

  RowHandler(
      Rows rows, StampReader stamps, NumberReader numbers, OddLines oddLines, Progress progress) {
    this.progress = progress;
    this.rows = rows;
    this.stamps = stamps;
    this.numbers = numbers;
    this.oddLines = oddLines;
    ledger = oddLines.ledger();
    lastHeadLine = oddLines.lastHeadLine();
    row = new double[rows.columns()];
    follow(oddLines.columns());
  }

  private void follow(ColumnMap map) {
    columns = map;
    wantedFields = oddLines.fields();
    valueOfField = map.valueOfField(wantedFields);
  }

  @Override
  protected void handleBegin(long startingLine) {
    line = startingLine;
    fields = 0;
    moreLines = 0;
    missing = 0;
    stampMs = StampReader.UNREADABLE;
    extra = false;
    blank = false;
    comment = false;
    garbled = false;
    Arrays.fill(row, Double.NaN);
    if (!texts.isEmpty()) {
      texts.clear();
    }
    if (!pending.isEmpty()) {
      pending.clear();
    }
  }

  @Override
  protected void handleEmpty() {
    blank = true;
  }

  @Override
  protected void handleField(int index, char[] buffer, int from, int size, boolean quoted) {
    fields = index + 1;
    if (size > 0 && !quoted && isPlain(buffer[from], buffer[from + size - 1])) {
      take(index, buffer, from, size);
      return;
    }
    int offset = from;
    int length = size;
    if (quoted) {
      moreLines += lineEnds(buffer, offset, length);
    }
    if (index == 0) {
      comment = length > 0 && buffer[offset] == '#' && !quoted;
      while (length > 0 && buffer[offset] == '\0') {
        offset++; // a reading written after a power failure keeps the zeros of the lost block
        length--;
        garbled = length == 0;
      }
    }
    while (length > 0 && isBlank(buffer[offset])) {
      offset++;
      length--;
    }
    while (length > 0 && isBlank(buffer[offset + length - 1])) {
      length--;
    }
    boolean stillQuoted = length > 1 && buffer[offset] == '"' && buffer[offset + length - 1] == '"';
    take(index, buffer, stillQuoted ? offset + 1 : offset, stillQuoted ? length - 2 : length);
  }

  private void take(int index, char[] buffer, int offset, int length) {
    if (index == columns.time()) {
      stampMs = stamps.epochMs(buffer, offset, length);
    } else if (index >= wantedFields) {
      extra |= length > 0;
    } else if (valueOfField[index] >= 0) {
      takeNumber(index, buffer, offset, length);
    }
    if (stampMs == StampReader.UNREADABLE) {
      texts.add(new String(buffer, offset, length));
    }
  }

  private void takeNumber(int index, char[] buffer, int offset, int length) {
    int value = valueOfField[index];
    row[value] = numbers.value(buffer, offset, length);
    if (!Double.isNaN(row[value])) {
      return;
    }
    if (numbers.lastWasUnreadable()) {
      String text = new String(buffer, offset, length);
      garbled |= OddLines.isGarbled(text);
      pending.add(new FileAccount.FieldNote(line, oddLines.columnName(value), text));
    } else {
      missing++;
    }
  }

  /** Whether a field starts and ends as numbers and most stamps do: nothing to take off it. */
  private static boolean isPlain(char first, char last) {
    boolean starts = (first >= '0' && first <= '9') || first == '-';
    return starts && last >= '0' && last <= '9';
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\u00a0';
  }

  private static long lineEnds(char[] buffer, int offset, int length) {
    long ends = 0;
    for (int i = offset; i < offset + length; i++) {
      boolean afterCr = i > offset && buffer[i - 1] == '\r';
      ends += buffer[i] == '\r' || (buffer[i] == '\n' && !afterCr) ? 1 : 0;
    }
    return ends;
  }

  @Override
  protected Object buildRecord() {
    linesSeen = line + moreLines;
    lastRecordLine = line;
    joinsLines |= moreLines > 0;
    lastIsOdd = false;
    if (++records % PROGRESS_RECORDS == 0) {
      progress.step("reading the record", rows.shareRead());
    }
    if (line <= lastHeadLine || blank || comment) {
      oddLines.plain(line, linesSeen, blank, comment);
    } else if (stampMs == StampReader.UNREADABLE || fields < wantedFields || extra || garbled) {
      lastIsOdd = true;
      boolean hasStamp = stampMs != StampReader.UNREADABLE;
      garbled |= texts.stream().anyMatch(OddLines::isGarbled);
      oddLines.odd(line, linesSeen, new OddLines.Look(texts, fields, extra, hasStamp, garbled));
      if (columns != oddLines.columns()) {
        follow(oddLines.columns());
      }
    } else {
      rows.add(stampMs, line, row, missing);
      unreadable.addAll(pending);
      if (moreLines > 0) {
        joinedLines.put(line, moreLines);
      }
    }
    return null;
  }

  /** Lines of the file. */
  long lines() {
    return linesSeen;
  }

  /** Whether a quoted field ran over a line end. */
  boolean joinsLines() {
    return joinsLines;
  }

  /** Whether the last field of the last record is one that is used. */
  boolean endsInUsedField() {
    int last = fields - 1;
    return last >= 0 && last < wantedFields && (last == columns.time() || valueOfField[last] >= 0);
  }

  /** Sets the last record aside as cut if it wasn't whole, or is known to break off in a field. */
  void cut(boolean inField) {
    boolean lastIsRow = rows.size() > 0 && rows.line(rows.size() - 1) == lastRecordLine;
    if (lastIsOdd) {
      ledger.lastIs(lastRecordLine, LineReason.CUT_LINE);
    } else if (inField && lastIsRow) {
      rows.truncate(rows.size() - 1);
      ledger.setAside(lastRecordLine, linesSeen, LineReason.CUT_LINE, "");
    }
  }

  LineLedger ledger() {
    return ledger;
  }

  Map<Long, Long> joinedLines() {
    return joinedLines;
  }

  List<FileAccount.FieldNote> unreadable() {
    return unreadable;
  }
}
