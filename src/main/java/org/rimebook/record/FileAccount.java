package org.rimebook.record;

import java.util.List;
import org.rimebook.station.Problem;

/**
 * What became of the lines of one file: {@code lines = used + sum of setAside lines}.
 *
 * @param file name of the file relative to the season folder
 * @param lines lines in the file; a quoted field that spans lines makes them one reading, and all
 *     its lines count with it
 * @param used lines that are readings of the record
 * @param setAside runs of lines that are not, in the order of the file
 * @param missingFields fields of used lines that were empty or held a missing token
 * @param unreadableFields the first 1000 fields of used lines that were neither a number nor a
 *     missing token; taken as missing
 * @param unreadableCount how many such fields there are
 * @param dialect how the file was read, in words (delimiter, decimal mark, encoding, time format)
 * @param notes its faults in words, one for each reason: columns it lacks, lines set aside other
 *     than heads and repeats, fields that couldn't be read
 */
public record FileAccount(
    String file,
    long lines,
    long used,
    List<SetAside> setAside,
    long missingFields,
    List<FieldNote> unreadableFields,
    long unreadableCount,
    String dialect,
    List<Problem> notes) {

  public FileAccount {
    setAside = List.copyOf(setAside);
    unreadableFields = List.copyOf(unreadableFields);
    notes = List.copyOf(notes);
  }

  /**
   * A field that couldn't be read as a number.
   *
   * @param line 1-based line
   * @param column name of the column
   * @param text what stands there
   */
  public record FieldNote(long line, String column, String text) {}
}
