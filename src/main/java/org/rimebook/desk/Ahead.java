package org.rimebook.desk;

import java.nio.file.Path;
import org.rimebook.desk.model.ReadAhead;
import org.rimebook.desk.series.LinesAhead;

/**
 * What is got ready while the window is still being made.
 *
 * @param season the season, being read
 * @param lines its lines, once it is read
 */
record Ahead(ReadAhead season, LinesAhead lines) {

  /** Begins with a season folder. */
  static Ahead of(Path folder) {
    LinesAhead lines = new LinesAhead();
    return new Ahead(ReadAhead.of(folder, read -> lines.make(read.season(), read.depths())), lines);
  }
}
