package org.rimebook.desk.model;

import java.nio.file.Files;
import java.time.Duration;
import java.time.Instant;
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
   * @param state when it was opened last, or that it isn't there, in words
   */
  public record Known(RecentSeason season, boolean there, String state) {

    /** All that is said of it, in a line. */
    public String words() {
      return season.name()
          + ", "
          + season.folder()
          + season.totalMm().map(mm -> ", " + mm.toPlainString() + " mm").orElse("")
          + ", "
          + state;
    }
  }

  /**
   * Looks where the seasons are; to be run away from the event thread, since a disk may be slow.
   *
   * @param seasons the seasons
   * @param now the time
   */
  public static RecentList look(List<RecentSeason> seasons, Instant now) {
    return new RecentList(seasons.stream().limit(SHOWN).map(season -> known(season, now)).toList());
  }

  private static Known known(RecentSeason season, Instant now) {
    return Files.exists(season.folder().resolve(Season.STATION_FILE))
        ? new Known(season, true, "opened " + ago(Duration.between(season.opened(), now)))
        : new Known(season, false, "no season is there now");
  }

  private static String ago(Duration age) {
    if (age.toMinutes() < 2) {
      return "just now";
    }
    if (age.toHours() < 2) {
      return age.toMinutes() + " minutes ago";
    }
    return age.toDays() < 2 ? age.toHours() + " hours ago" : age.toDays() + " days ago";
  }
}
