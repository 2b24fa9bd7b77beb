package org.rimebook.practice;

import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.rimebook.notebook.Entry;

/** Writes a season as the folder a logger without faults and an analyst would leave. */
public final class PracticeFolder {

  private PracticeFolder() {}

  /** Writes one; frequencies to a hundredth. */
  public static void write(SimulatedSeason season, List<Entry> entries, Path folder)
      throws IOException {
    SeasonFolderWriter.write(
        new PracticeSeason(
            season,
            new LoggerHabits(',', '.', LineDelimiter.LF, 2, false),
            LoggerFaults.NONE,
            entries,
            new PracticeSeason.Note("Trial", "A season of the bench.", List.of())),
        folder);
  }
}
