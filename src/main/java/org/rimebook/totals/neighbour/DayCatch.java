package org.rimebook.totals.neighbour;

import java.util.OptionalDouble;
import org.rimebook.station.Interval;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/**
 * What was caught in one row of a daily table.
 *
 * @param span what the catch is of: the day, or all days since it began to accumulate
 * @param catchMm the catch [mm], not negative; empty when missing
 * @param quality its quality
 */
public record DayCatch(Interval span, OptionalDouble catchMm, Quality quality) {

  /** A row of a table of ours. */
  public static DayCatch of(TotalRow row, Resolution resolution) {
    long fromMs = row.accumulatedSinceMs().orElse(row.interval().fromMs());
    OptionalDouble mm =
        row.catchUnits().isPresent()
            ? OptionalDouble.of(resolution.toMm(row.catchUnits().getAsLong()).doubleValue())
            : OptionalDouble.empty();
    return new DayCatch(new Interval(fromMs, row.interval().toMs()), mm, row.quality());
  }

  /** Whether it says how much fell: it isn't missing, and all of its time is known. */
  boolean usable() {
    return catchMm.isPresent() && quality != Quality.POOR && quality != Quality.MISSING;
  }
}
