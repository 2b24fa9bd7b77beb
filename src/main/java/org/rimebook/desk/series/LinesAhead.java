package org.rimebook.desk.series;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.rimebook.depth.WireDepths;
import org.rimebook.season.Season;

/** Lines of a season made while the window for it is still being made; safe for threads. */
public final class LinesAhead {

  private final AtomicReference<SeasonSeries> made = new AtomicReference<>();

  /** Makes the lines of a season; on whatever thread has read it. */
  public void make(Season season, WireDepths depths) {
    made.set(SeasonSeries.of(season, depths, Optional.empty()));
  }

  /**
   * Hands the lines over, once.
   *
   * @param depths depths of the season that is open
   * @return empty when none were made, or those of something else
   */
  public Optional<SeasonSeries> taken(WireDepths depths) {
    return Optional.ofNullable(made.getAndSet(null))
        .filter(lines -> lines.follows(depths, Optional.empty()));
  }
}
