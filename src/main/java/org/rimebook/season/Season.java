package org.rimebook.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.Notebook;
import org.rimebook.notebook.NotebookReader;
import org.rimebook.record.RecordDigest;
import org.rimebook.record.RecordReader;
import org.rimebook.record.RecordSize;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;
import org.rimebook.station.Sha256;
import org.rimebook.station.StationSheet;
import org.rimebook.station.StationSheetReader;

/**
 * What a season folder holds.
 *
 * @param sheet the station sheet
 * @param record the record, at least one row
 * @param notebook the notebook; empty when there is none
 * @param digests digests of the three
 * @param notes what was met on reading and didn't stop it: that of the sheet, of the notebook, of
 *     the record
 */
public record Season(
    StationSheet sheet,
    SeasonRecord record,
    Notebook notebook,
    Digests digests,
    List<Problem> notes) {

  /** Name of the station sheet in a season folder. */
  public static final String STATION_FILE = "station.json";

  /** Name of the notebook in a season folder. */
  public static final String NOTEBOOK_FILE = "notebook.jsonl";

  public Season {
    notes = List.copyOf(notes);
  }

  /**
   * Digests of the inputs, SHA-256 in lower-case hexadecimal.
   *
   * @param files of the record's files
   * @param station of the bytes of the station sheet
   * @param notebook of the bytes of the notebook, of no bytes when there is none
   */
  public record Digests(RecordDigest files, String station, String notebook) {

    /** Of the record, see {@link RecordDigest#record()}. */
    public String record() {
      return files.record();
    }

    /** The same but for the notebook. */
    public Digests with(String otherNotebook) {
      return new Digests(files, station, otherNotebook);
    }

    /** Papers are told apart by this text: it stays as it is. */
    @Override
    public String toString() {
      return "Digests[record=" + files + ", station=" + station + ", notebook=" + notebook + "]";
    }
  }

  /**
   * What can be known of a season folder without reading its readings.
   *
   * @param sheet the station sheet
   * @param digests digests of the inputs as they are on disk now
   * @param size how large the record is
   */
  public record Outline(StationSheet sheet, Digests digests, RecordSize size) {}

  /**
   * Looks at a season folder without reading its readings.
   *
   * @param folder the folder
   * @throws InputException when its sheet can't be read or no file of the record is there
   */
  public static Outline outline(Path folder) throws InputException {
    try {
      byte[] station = stationBytes(folder);
      StationSheet sheet =
          StationSheetReader.read(Utf8.text(station, STATION_FILE), STATION_FILE).sheet();
      String log = Sha256.hex(bytesOrNone(folder.resolve(NOTEBOOK_FILE)));
      Digests digests = new Digests(RecordReader.digest(folder, sheet), Sha256.hex(station), log);
      return new Outline(sheet, digests, RecordReader.size(folder, sheet));
    } catch (IOException e) {
      throw unread(folder, e);
    }
  }

  /**
   * Reads a season folder.
   *
   * @param folder the folder
   * @throws InputException when it can't be read as a season, naming file, line and what to do
   */
  public static Season open(Path folder) throws InputException {
    return open(folder, Progress.NONE);
  }

  /**
   * Reads a season folder.
   *
   * @param folder the folder
   * @param progress hears of it
   * @throws InputException when it can't be read as a season, naming file, line and what to do
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static Season open(Path folder, Progress progress) throws InputException {
    return open(folder, false, progress);
  }

  /**
   * Reads a season folder that is to be seen soon. The digest of its record is taken when it is
   * asked for, unless there is a sign-off, which it is held against.
   *
   * @param folder the folder
   * @param progress hears of it
   * @throws InputException when it can't be read as a season, naming file, line and what to do
   * @throws java.util.concurrent.CancellationException when it is called off
   */
  public static Season openSoon(Path folder, Progress progress) throws InputException {
    return open(folder, true, progress);
  }

  private static Season open(Path folder, boolean soon, Progress progress) throws InputException {
    try {
      progress.step("reading the station sheet and the notebook", 0);
      byte[] station = stationBytes(folder);
      StationSheetReader.Reading sheet =
          StationSheetReader.read(Utf8.text(station, STATION_FILE), STATION_FILE);
      byte[] log = bytesOrNone(folder.resolve(NOTEBOOK_FILE));
      Notebook notebook = NotebookReader.read(Utf8.lenient(log), NOTEBOOK_FILE);
      boolean signed = notebook.inForce().stream().anyMatch(Entry.SignOff.class::isInstance);
      SeasonRecord record =
          soon && !signed
              ? RecordReader.readSoon(folder, sheet.sheet(), progress)
              : RecordReader.read(folder, sheet.sheet(), progress);
      List<Problem> notes = new ArrayList<>();
      for (String member : sheet.unknownMembers()) {
        notes.add(
            Problem.inFile(
                STATION_FILE,
                "the member \"" + member + "\" isn't known to this version and has no effect",
                "It is kept"));
      }
      notes.addAll(notebook.notes());
      notes.addAll(record.provenance().notes());
      Digests digests =
          new Digests(record.provenance().digest(), Sha256.hex(station), Sha256.hex(log));
      return new Season(sheet.sheet(), record, notebook, digests, notes);
    } catch (IOException e) {
      throw unread(folder, e);
    }
  }

  /**
   * Waits until its digests are taken.
   *
   * @param folder the season's folder
   * @throws InputException when a file of the record can't be read or has changed since it was
   */
  public void recognised(Path folder) throws InputException {
    try {
      digests.record();
    } catch (UncheckedIOException e) {
      throw new InputException(
          Problem.inFile(
              folder.toString(),
              "what was read of it can't be told from what is there now: "
                  + e.getCause().getMessage(),
              "Open the season anew"));
    }
  }

  private static InputException unread(Path folder, IOException e) {
    return new InputException(
        Problem.inFile(
            folder.toString(),
            "can't be read (" + e.getClass().getSimpleName() + ": " + e.getMessage() + ")",
            "Check that the disk is there and that you may read it"));
  }

  /** The season under a notebook that isn't on disk: its digest is empty. */
  public Season with(Notebook other) {
    return with(other, "");
  }

  /**
   * The season under the notebook that is on disk now; sheet and record are kept.
   *
   * @param folder the season's folder
   * @throws InputException when the notebook can't be read
   */
  public Season withNotebookIn(Path folder) throws InputException {
    try {
      byte[] log = bytesOrNone(folder.resolve(NOTEBOOK_FILE));
      return with(NotebookReader.read(Utf8.lenient(log), NOTEBOOK_FILE), Sha256.hex(log));
    } catch (IOException e) {
      throw unread(folder, e);
    }
  }

  private Season with(Notebook other, String sha256) {
    List<Problem> ofRecord = record.provenance().notes();
    int ofSheet = notes.size() - notebook.notes().size() - ofRecord.size();
    List<Problem> all = new ArrayList<>(notes.subList(0, ofSheet));
    all.addAll(other.notes());
    all.addAll(ofRecord);
    return new Season(sheet, record, other, digests.with(sha256), all);
  }

  private static byte[] stationBytes(Path folder) throws InputException, IOException {
    if (!Files.isDirectory(folder)) {
      throw new InputException(
          Problem.inFile(
              folder.toString(),
              "isn't a folder",
              "Name a season folder: one that holds station.json and records/"));
    }
    try {
      return Files.readAllBytes(folder.resolve(STATION_FILE));
    } catch (NoSuchFileException e) {
      throw new InputException(
          Problem.inFile(
              folder.resolve(STATION_FILE).toString(),
              "isn't there, so the wires and their calibrations aren't known",
              "Run 'rimebook new "
                  + folder
                  + "' to have one drafted from the record's header, then enter what it marks"));
    }
  }

  private static byte[] bytesOrNone(Path file) throws IOException {
    return Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
  }
}
