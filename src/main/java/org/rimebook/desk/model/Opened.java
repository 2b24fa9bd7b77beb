package org.rimebook.desk.model;

import java.nio.file.Path;
import org.rimebook.depth.WireDepths;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonDepths;
import org.rimebook.station.Interval;

/**
 * A season that is open.
 *
 * @param folder the season folder
 * @param season sheet, record and notebook, the latest
 * @param stage the season as it was opened, with the depths of its wires
 */
public record Opened(Path folder, Season season, SeasonDepths stage) {

  /** A season just opened. */
  public Opened(Path folder, SeasonDepths stage) {
    this(folder, stage.season(), stage);
  }

  /** Depth by wire and row, screened with the notebook as it was on opening. */
  public WireDepths depths() {
    return stage.depths();
  }

  /** From just before the first reading to just after the last. */
  public Interval whole() {
    int rows = season.record().size();
    return new Interval(season.record().stampMs(0) - 1, season.record().stampMs(rows - 1) + 1);
  }

  /** The same season with another notebook. */
  Opened with(Season changed) {
    return new Opened(folder, changed, stage);
  }
}
