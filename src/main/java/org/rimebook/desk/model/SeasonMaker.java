package org.rimebook.desk.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.rimebook.season.Season;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;
import org.rimebook.station.StationSheetWriter;

/**
 * Makes a season folder of a draft: copies the logger files, then writes the station sheet. Nothing
 * that is there is replaced; when it fails or is cancelled, what it made is taken away again.
 */
public final class SeasonMaker {

  private static final int PIECE = 1 << 20;
  private static final String RECORDS = "records";

  private final SeasonDraft draft;
  private final Progress progress;
  private final Deque<Path> made = new ArrayDeque<>();

  private SeasonMaker(SeasonDraft draft, Progress progress) {
    this.draft = draft;
    this.progress = progress;
  }

  /**
   * Makes the folder; to be run away from the event thread.
   *
   * @param draft the draft; where it isn't complete the sheet marks with null what to enter
   * @param progress told how far it is
   * @return the folder
   * @throws InputException when something in the way is to be moved first, or can't be written
   */
  public static Path make(SeasonDraft draft, Progress progress) throws InputException {
    SeasonMaker maker = new SeasonMaker(draft, progress);
    boolean done = false;
    try {
      maker.refuse();
      maker.write();
      done = true;
      return draft.folder();
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              draft.folder().toString(),
              "can't be made (" + e.getClass().getSimpleName() + ": " + e.getMessage() + ")",
              "Make room, ask for the right to write there, or choose another folder"));
    } finally {
      if (!done) {
        maker.takeAway();
      }
    }
  }

  private void refuse() throws InputException {
    List<Problem> problems = new ArrayList<>();
    Path sheet = draft.folder().resolve(Season.STATION_FILE);
    if (Files.exists(draft.folder()) && !Files.isDirectory(draft.folder())) {
      problems.add(inTheWay(draft.folder(), "Choose another folder"));
    }
    if (Files.exists(sheet)) {
      problems.add(inTheWay(sheet, "Open that season, or choose another folder"));
    }
    for (Path file : draft.source().copies()) {
      if (Files.exists(target(file)) && !isThere(file)) {
        problems.add(inTheWay(target(file), "Rename one of the two, or choose another folder"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private static Problem inTheWay(Path path, String remedy) {
    return Problem.inFile(path.toString(), "is there already and is left as it is", remedy);
  }

  private Path target(Path file) {
    return draft.folder().resolve(RECORDS).resolve(file.getFileName());
  }

  private boolean isThere(Path file) {
    return file.equals(target(file).toAbsolutePath().normalize());
  }

  private void write() throws IOException, InputException {
    folder(draft.folder());
    long total = 1;
    for (Path file : draft.source().copies()) {
      total += Files.size(file);
    }
    long before = 0;
    for (Path file : draft.source().copies()) {
      if (!isThere(file)) {
        folder(draft.folder().resolve(RECORDS));
        copy(
            file,
            progress.part(before / (double) total, (before + Files.size(file)) / (double) total));
      }
      before += Files.size(file);
    }
    text(draft.folder().resolve(Season.STATION_FILE), sheetText());
  }

  private String sheetText() throws InputException {
    return DraftCheck.of(draft).complete()
        ? StationSheetWriter.write(DraftCheck.read(draft), Optional.empty())
        : DraftText.of(draft);
  }

  private void folder(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Path parent = folder.toAbsolutePath().getParent();
      if (parent != null) {
        folder(parent);
      }
      Files.createDirectory(folder);
      made.push(folder);
    }
  }

  private void copy(Path file, Progress part) throws IOException {
    Path there = target(file);
    Path partial = there.resolveSibling("." + there.getFileName() + ".part");
    String stage = "copying " + file.getFileName();
    made.push(partial);
    try (InputStream in = Files.newInputStream(file);
        OutputStream out = Files.newOutputStream(partial)) {
      double size = Math.max(1, Files.size(file));
      long copied = 0;
      for (byte[] piece = in.readNBytes(PIECE); piece.length > 0; piece = in.readNBytes(PIECE)) {
        part.step(stage, Math.min(1, copied / size));
        out.write(piece);
        copied += piece.length;
      }
    }
    Files.setLastModifiedTime(partial, Files.getLastModifiedTime(file));
    Files.move(partial, there);
    made.push(there);
  }

  private void text(Path file, String text) throws IOException {
    progress.step("writing " + file.getFileName(), 1);
    Path partial = file.resolveSibling("." + file.getFileName() + ".part");
    try {
      Files.writeString(partial, text, StandardCharsets.UTF_8);
      Files.move(partial, file);
    } finally {
      Files.deleteIfExists(partial);
    }
  }

  private void takeAway() {
    for (Path path : made) {
      path.toFile().delete();
    }
  }
}
