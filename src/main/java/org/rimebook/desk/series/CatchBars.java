package org.rimebook.desk.series;

import java.util.List;
import org.rimebook.station.Interval;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

/** Totals as bars, in order of time. */
public final class CatchBars {

  private final List<TotalRow> rows;
  private final Resolution resolution;

  /**
   * @param rows hours or days, in order
   * @param resolution their resolution
   */
  public CatchBars(List<TotalRow> rows, Resolution resolution) {
    this.rows = List.copyOf(rows);
    this.resolution = resolution;
  }

  /** Bars. */
  public int size() {
    return rows.size();
  }

  /** Start of a bar [ms since epoch]. */
  public long fromMs(int bar) {
    return interval(bar).fromMs();
  }

  /** End of a bar [ms since epoch]. */
  public long toMs(int bar) {
    return interval(bar).toMs();
  }

  /** Since when the total holds all that fell [ms since epoch]: the start, or earlier. */
  public long sinceMs(int bar) {
    return rows.get(bar).accumulatedSinceMs().orElse(fromMs(bar));
  }

  /** Whether there is no total. */
  public boolean isMissing(int bar) {
    return rows.get(bar).catchUnits().isEmpty();
  }

  /** The total [mm]; NaN when there is none. */
  public double catchMm(int bar) {
    TotalRow row = rows.get(bar);
    return row.catchUnits().isEmpty() ? Double.NaN : resolution.mm() * row.catchUnits().getAsLong();
  }

  /** Its standard uncertainty (k = 1) [mm]; 0 when there is none. */
  public double uncertaintyMm(int bar) {
    return rows.get(bar).uncertaintyMm().orElse(0);
  }

  /** Its quality. */
  public Quality quality(int bar) {
    return rows.get(bar).quality();
  }

  /** The first bar that ends after an instant; {@link #size()} when there is none. */
  public int firstEndingAfter(long epochMs) {
    int low = 0;
    int high = size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (toMs(middle) <= epochMs) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The first bar that starts at an instant or later; {@link #size()} when there is none. */
  public int firstStartingAt(long epochMs) {
    int bar = firstEndingAfter(epochMs);
    return bar < size() && fromMs(bar) < epochMs ? bar + 1 : bar;
  }

  private Interval interval(int bar) {
    return rows.get(bar).interval();
  }
}
