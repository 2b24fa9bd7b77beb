package org.rimebook.desk.model;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * A season that was open before.
 *
 * @param folder its folder, absolute
 * @param name name of the station
 * @param opened when it was opened last
 * @param totalMm the season's catch when it was last computed [mm]; empty when not known
 */
public record RecentSeason(Path folder, String name, Instant opened, Optional<BigDecimal> totalMm) {

  public RecentSeason {
    folder = folder.toAbsolutePath().normalize();
  }
}
