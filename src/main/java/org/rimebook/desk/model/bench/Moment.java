package org.rimebook.desk.model.bench;

import java.util.Optional;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.StationSheet;

/**
 * The season as it stands when a paper is made.
 *
 * @param season sheet, record and notebook
 * @param settled what was computed of it; empty until that is done
 * @param unsigned whether it isn't known yet who writes entries
 */
record Moment(Season season, Optional<SeasonResult> settled, boolean unsigned) {

  StationSheet sheet() {
    return season.sheet();
  }
}
