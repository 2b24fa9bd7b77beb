package org.rimebook.practice;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** The sample seasons of the project, and the tool that writes them. */
public final class SampleSeasons {

  private SampleSeasons() {}

  /** The sample seasons by the name of their folder; each is made when asked for. */
  public static Map<String, Supplier<PracticeSeason>> all() {
    Map<String, Supplier<PracticeSeason>> seasons = new TreeMap<>();
    seasons.put("quiet-valley", QuietValley::season);
    seasons.put("windy-ridge", WindyRidge::season);
    seasons.put("hard-winter", HardWinter::season);
    return seasons;
  }

  /**
   * Writes every sample season.
   *
   * @param arguments the directory to write the folders in
   * @throws IOException when a file can't be written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      throw new IllegalArgumentException("say where to: SampleSeasons DIRECTORY");
    }
    for (Map.Entry<String, Supplier<PracticeSeason>> sample : all().entrySet()) {
      SeasonFolderWriter.write(sample.getValue().get(), Path.of(arguments[0], sample.getKey()));
    }
  }
}
