package org.rimebook.record;

import java.util.List;
import java.util.Map;
import org.rimebook.station.Problem;

/**
 * What reading a file gave, beside its rows.
 *
 * @param file name of the file
 * @param firstRow its first row among the rows read
 * @param endRow the row after its last
 * @param lines lines of the file
 * @param ledger the lines not taken
 * @param joinedLines lines beyond the first of the rows that have more than one, by their line
 * @param unreadable fields of its rows that couldn't be read
 * @param dialect how it was read, in words
 * @param notes what is wrong with it as a whole and didn't stop its reading
 */
record FileReading(
    String file,
    int firstRow,
    int endRow,
    long lines,
    LineLedger ledger,
    Map<Long, Long> joinedLines,
    List<FileAccount.FieldNote> unreadable,
    String dialect,
    List<Problem> notes) {

  /** The same where other rows stand before its own. */
  FileReading after(int rowsBefore) {
    return new FileReading(
        file,
        firstRow + rowsBefore,
        endRow + rowsBefore,
        lines,
        ledger,
        joinedLines,
        unreadable,
        dialect,
        notes);
  }

  /** Sets a row of the file aside after all. */
  void setAside(Rows rows, int row, LineReason reason, String detail) {
    long line = rows.line(row);
    ledger.setAside(line, line + joinedLines.getOrDefault(line, 0L), reason, detail);
  }
}
