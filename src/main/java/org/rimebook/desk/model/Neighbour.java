package org.rimebook.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.rimebook.export.neighbour.DailyTable;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.neighbour.DayCatch;

/**
 * The daily catch of another station, to look at beside one's own.
 *
 * @param name what it is called: the name of its table's file
 * @param days its days in order, in hundredths of a millimetre
 */
public record Neighbour(String name, List<TotalRow> days) {

  /** The resolution of its days. */
  public static final Resolution RESOLUTION = Resolution.HUNDREDTH;

  public Neighbour {
    days = List.copyOf(days);
  }

  /**
   * Reads a neighbour's table.
   *
   * @throws InputException when it can't be used, naming line and column and what to do
   * @throws IOException when it can't be read
   */
  public static Neighbour read(Path table) throws InputException, IOException {
    List<TotalRow> days = new ArrayList<>();
    for (DayCatch day : DailyTable.read(table)) {
      while (!days.isEmpty() && last(days).fromMs() >= day.span().fromMs()) {
        days.remove(days.size() - 1); // missing by itself, and held by this row
      }
      days.add(row(day));
    }
    return new Neighbour(table.getFileName().toString(), days);
  }

  private static Interval last(List<TotalRow> days) {
    return days.get(days.size() - 1).interval();
  }

  private static TotalRow row(DayCatch day) {
    OptionalLong units =
        day.catchMm().isPresent()
            ? OptionalLong.of(Math.round(day.catchMm().getAsDouble() / RESOLUTION.mm()))
            : OptionalLong.empty();
    return new TotalRow(
        day.span(),
        units,
        OptionalDouble.empty(),
        units.isPresent() ? day.quality() : Quality.MISSING,
        1,
        List.of(),
        OptionalLong.empty(),
        OptionalLong.empty(),
        Optional.empty(),
        Set.of());
  }
}
