package org.rimebook.record;

import java.util.List;
import java.util.Optional;
import org.rimebook.station.Problem;
import org.rimebook.station.RecordLayout;

/** Tells whether a file can't be read because the station sheet states another delimiter. */
final class DelimiterSuspect {

  private DelimiterSuspect() {}

  /**
   * The problem, when the header isn't found with the delimiter stated and is with another.
   *
   * @param head the first lines of the file
   */
  static Optional<Problem> of(
      RecordFile file, List<LogicalLine> head, Wanted wanted, RecordLayout layout) {
    return DialectFinder.withOtherDelimiter(head, wanted, layout)
        .filter(other -> ColumnMap.of(other.names(), wanted).time() >= 0)
        .map(
            other ->
                new Problem(
                    file.name(),
                    other.headerLine(),
                    0,
                    "the header isn't found with record.delimiter "
                        + layout.delimiter().map(Dialect::word).orElse("")
                        + " of station.json, and is with "
                        + Dialect.word(other.delimiter()),
                    "Correct record.delimiter or leave it out: the file shows it by itself"));
  }
}
