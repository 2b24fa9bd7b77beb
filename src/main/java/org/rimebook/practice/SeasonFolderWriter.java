package org.rimebook.practice;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.GZIPOutputStream;
import org.rimebook.notebook.EntryWriter;
import org.rimebook.station.InputException;
import org.rimebook.station.StationSheetWriter;

/**
 * Writes a practice season as a season folder: {@code station.json}, {@code records/*.csv.gz},
 * {@code notebook.jsonl}, {@code NOTE.md} and the truth under {@code truth/}. Files there already
 * are replaced. What is inside the gzip files is the same on every machine.
 */
public final class SeasonFolderWriter {

  private SeasonFolderWriter() {}

  /**
   * Writes the folder.
   *
   * @param practice the season
   * @param folder the season folder; made when absent
   * @throws IOException when a file can't be written
   */
  public static void write(PracticeSeason practice, Path folder) throws IOException {
    SimulatedSeason season = practice.season();
    Path records = Files.createDirectories(folder.resolve("records"));
    Path truth = Files.createDirectories(folder.resolve("truth"));
    text(folder.resolve("station.json"), sheet(season));
    LoggerFiles files = new LoggerFiles(season, practice.habits(), practice.faults());
    for (Map.Entry<YearMonth, String> file : files.content().entrySet()) {
      gzip(records.resolve(file.getKey() + ".csv.gz"), file.getValue());
    }
    if (!practice.entries().isEmpty()) {
      text(folder.resolve("notebook.jsonl"), notebook(practice));
    }
    text(folder.resolve("NOTE.md"), NoteWriter.text(practice));
    TruthTables tables = new TruthTables(season);
    text(truth.resolve("hourly.csv"), tables.hourly());
    text(truth.resolve("daily.csv"), tables.daily());
    text(truth.resolve("season.csv"), tables.totals());
  }

  private static String sheet(SimulatedSeason season) {
    try {
      return StationSheetWriter.write(season.sheet(), Optional.empty());
    } catch (InputException e) {
      throw new IllegalStateException("no earlier text was given, so none can be wrong", e);
    }
  }

  private static String notebook(PracticeSeason practice) {
    return practice.entries().stream()
        .map(entry -> EntryWriter.line(entry, practice.season().sheet().utcOffset()) + "\n")
        .collect(Collectors.joining());
  }

  private static void text(Path file, String text) throws IOException {
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  private static void gzip(Path file, String text) throws IOException {
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }
}
