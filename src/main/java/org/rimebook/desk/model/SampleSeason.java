package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.rimebook.practice.PracticeSeason;
import org.rimebook.practice.SampleSeasons;
import org.rimebook.practice.SeasonFolderWriter;
import org.rimebook.season.Season;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.Progress;

/**
 * An invented season to try things on.
 *
 * @param folderName name of its folder
 * @param title its name on screen
 * @param words what it shows, in a sentence
 */
public record SampleSeason(String folderName, String title, String words) {

  /** The sample seasons, the easiest first. */
  public static final List<SampleSeason> ALL =
      List.of(
          new SampleSeason(
              "quiet-valley",
              "Quiet valley",
              "A sheltered winter. What isn't catch is slow: sun, temperature, evaporation."),
          new SampleSeason(
              "windy-ridge",
              "Windy ridge",
              "An open ridge, read every minute. The wind pumps the bucket."),
          new SampleSeason(
              "hard-winter",
              "Hard winter",
              "Everything goes wrong once, with the notebook that puts it right."));

  /** The folder the samples are written to unless another is chosen. */
  public static Path home() {
    return Path.of(System.getProperty("user.home", "")).resolve("rimebook-samples");
  }

  /**
   * Writes it, unless it is there; to be run away from the event thread. It comes to be whole or
   * not at all.
   *
   * @param parent folder that holds its folder; made when absent
   * @param progress told how far it is
   * @return its folder
   * @throws InputException when it can't be written
   */
  public Path write(Path parent, Progress progress) throws InputException {
    Path folder = parent.resolve(folderName);
    if (Files.exists(folder.resolve(Season.STATION_FILE))) {
      return folder;
    }
    try {
      Files.createDirectories(parent);
      Path partial = Files.createTempDirectory(parent, "." + folderName + "-");
      try {
        progress.step("inventing the weather and the readings", 0.05);
        PracticeSeason season = SampleSeasons.all().get(folderName).get();
        progress.step("writing the files", 0.6);
        SeasonFolderWriter.write(season, partial.resolve(folderName));
        progress.step("putting them in place", 0.95);
        Files.move(partial.resolve(folderName), folder);
      } finally {
        remove(partial);
      }
      return folder;
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              folder.toString(),
              "can't be written (" + e.getClass().getSimpleName() + ": " + e.getMessage() + ")",
              "Choose another folder for the samples, or move away what is there"));
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path path : walk.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
