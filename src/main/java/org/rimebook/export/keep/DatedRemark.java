package org.rimebook.export.keep;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.EntryIds;
import org.rimebook.notebook.NotebookLog;
import org.rimebook.season.Season;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Problem;
import org.rimebook.station.StationSheet;

/** Writes a remark into the notebook of a season folder, so that what was done there is dated. */
public final class DatedRemark {

  private DatedRemark() {}

  /**
   * Appends the remark.
   *
   * @param folder the season folder
   * @param sheet its station sheet
   * @param about the span it is about, if any
   * @param note its words
   * @param by who writes
   * @throws InputException when the notebook can't be read or written
   */
  public static void append(
      Path folder, StationSheet sheet, Optional<Interval> about, String note, Writer by)
      throws InputException {
    Path file = folder.resolve(Season.NOTEBOOK_FILE);
    try {
      EntryIds ids =
          EntryIds.of(
              "",
              NotebookLog.read(file),
              new EntryIds.Writer(by.initials(), by.clock(), sheet.utcOffset()));
      NotebookLog.append(
          file, List.of(new Entry.Remark(ids.header(note), about)), sheet.utcOffset());
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              file.toString(),
              "can't be written (" + e.getMessage() + ")",
              "Ask for the right to write there, and write the remark again"));
    }
  }

  /**
   * Who writes, and when.
   *
   * @param initials initials
   * @param clock tells the time
   */
  public record Writer(String initials, Clock clock) {}
}
