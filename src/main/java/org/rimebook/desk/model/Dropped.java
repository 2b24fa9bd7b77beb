package org.rimebook.desk.model;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.rimebook.season.Season;

/**
 * What to do with paths that were dropped or chosen.
 *
 * @param kind what they are
 * @param paths the paths; one when a season is to be opened
 */
public record Dropped(Kind kind, List<Path> paths) {

  /** What they are. */
  public enum Kind {
    /** A season folder. */
    SEASON,
    /** A folder without a station sheet, or logger files. */
    RECORD
  }

  public Dropped {
    paths = List.copyOf(paths);
  }

  /** A folder with a station sheet, or the sheet itself, is a season; anything else is a record. */
  public static Dropped of(List<Path> paths) {
    Path first = paths.get(0);
    if (paths.size() == 1 && Files.exists(first.resolve(Season.STATION_FILE))) {
      return new Dropped(Kind.SEASON, paths);
    }
    boolean sheet = paths.size() == 1 && first.endsWith(Season.STATION_FILE);
    Path parent = first.toAbsolutePath().getParent();
    return sheet && parent != null
        ? new Dropped(Kind.SEASON, List.of(parent))
        : new Dropped(Kind.RECORD, paths);
  }
}
