package org.rimebook.export.neighbour;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.FileFault;
import org.rimebook.station.InputException;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.neighbour.Comparison;
import org.rimebook.totals.neighbour.DayCatch;

/**
 * Daily tables of neighbouring stations.
 *
 * @param names what they are called, in their order
 * @param days the days of each
 */
public record Neighbours(List<String> names, List<List<DayCatch>> days) {

  public Neighbours {
    names = List.copyOf(names);
    days = List.copyOf(days);
  }

  /**
   * Reads tables.
   *
   * @param tables at least one
   * @throws InputException when one can't be used, naming line and column and what to do
   * @throws IOException when one can't be read; its message names it
   */
  public static Neighbours read(List<Path> tables) throws InputException, IOException {
    List<List<DayCatch>> days = new ArrayList<>();
    for (Path table : tables) {
      try {
        days.add(DailyTable.read(table));
      } catch (IOException e) {
        throw new IOException(table + ": can't be read (" + FileFault.words(e, table) + ")", e);
      }
    }
    return new Neighbours(tables.stream().map(Path::toString).toList(), days);
  }

  /** A season's daily catch beside theirs. */
  public Comparison against(SeasonResult result) {
    List<DayCatch> own =
        result.totals(Resolution.HUNDREDTH).daily().stream()
            .map(row -> DayCatch.of(row, Resolution.HUNDREDTH))
            .toList();
    return Comparison.of(own, days, result.season().sheet().utcOffset());
  }
}
