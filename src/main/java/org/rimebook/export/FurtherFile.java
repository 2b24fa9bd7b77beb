package org.rimebook.export;

import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;

/**
 * A file the program can make from a season beside its tables: written with them when asked for,
 * and verified with them when it is there.
 */
public interface FurtherFile {

  /** Name of the file in the folder of the tables, for example {@code report.pdf}. */
  String fileName();

  /**
   * Its bytes, the same for the same season and version on any machine.
   *
   * @param result the season
   * @param resolution resolution of the totals
   */
  byte[] bytes(SeasonResult result, Resolution resolution);
}
