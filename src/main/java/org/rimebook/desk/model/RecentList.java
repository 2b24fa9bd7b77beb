package org.rimebook.desk.model;

import java.nio.file.Files;
import java.util.List;
import org.rimebook.season.Season;

/**
 * The seasons that were open, as the start page lists them.
 *
 * @param seasons the latest first
 */
public record RecentList(List<Known> seasons) {

  private static final int SHOWN = 9;

  public RecentList {
    seasons = List.copyOf(seasons);
  }

  /**
   * A season that was open.
   *
   * @param season the season
   * @param there whether its folder is there and holds a station sheet
   */
  public record Known(RecentSeason season, boolean there) {}

  /**
   * Looks where the seasons are; to be run away from the event thread, since a disk may be slow.
   */
  public static RecentList look(List<RecentSeason> seasons) {
    return new RecentList(
        seasons.stream()
            .limit(SHOWN)
            .map(s -> new Known(s, Files.exists(s.folder().resolve(Season.STATION_FILE))))
            .toList());
  }
}
