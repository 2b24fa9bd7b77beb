package org.rimebook.export.network;

import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.rimebook.notebook.Entry;
import org.rimebook.practice.LoggerFaults;
import org.rimebook.practice.LoggerHabits;
import org.rimebook.practice.PracticeSeason;
import org.rimebook.practice.SeasonFolderWriter;
import org.rimebook.practice.bench.MarkedSeason;
import org.rimebook.practice.bench.Scenario;
import org.rimebook.practice.bench.Variant;
import org.rimebook.practice.bench.Winter;

/**
 * Writes a network to measure with: years of readings every minute by three wires, every second
 * with the notebook of an analyst, the others without. The same arguments give the same readings.
 */
final class NetworkBench {

  private static final long MINUTE_MS = 60_000;
  private static final List<Scenario> CLASSES =
      List.of(Scenario.CALM, Scenario.VISITS, Scenario.CAPPING, Scenario.EVERYTHING);

  private NetworkBench() {}

  /**
   * Writes the network.
   *
   * @param arguments the folder to write into, how many seasons, days of each
   */
  public static void main(String[] arguments) throws IOException {
    Path root = Path.of(arguments[0]);
    int wanted = Integer.parseInt(arguments[1]);
    int days = Integer.parseInt(arguments[2]);
    int written = 0;
    for (long seed = 1; written < wanted; seed++) {
      Scenario scenario = CLASSES.get(written % CLASSES.size());
      MarkedSeason marked = new Winter(scenario, Variant.PLAIN, seed, days).season();
      if (marked.season().sampling().stepMs() != MINUTE_MS) {
        continue;
      }
      List<Entry> entries = written / 2 % 2 == 0 ? List.of() : marked.notebook().history();
      PracticeSeason season =
          new PracticeSeason(
              marked.season(),
              new LoggerHabits(',', '.', LineDelimiter.LF, 2, false),
              LoggerFaults.NONE,
              entries,
              new PracticeSeason.Note("Bench", "A year to measure with.", List.of("None.")));
      SeasonFolderWriter.write(season, root.resolve(scenario.label() + "-" + seed));
      written++;
    }
  }
}
