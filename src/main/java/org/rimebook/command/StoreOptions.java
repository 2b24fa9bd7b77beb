package org.rimebook.command;

import java.time.Clock;
import java.util.Optional;
import org.rimebook.export.keep.DatedRemark;
import picocli.CommandLine.Option;

/** Who stores a result in the season, when it is to be stored. */
final class StoreOptions {

  @Option(
      names = "--by",
      paramLabel = "INITIALS",
      description = "Store the result in the season folder, dated, under these initials.")
  private Optional<String> by;

  /** Who writes; empty when nothing is to be stored. */
  Optional<DatedRemark.Writer> writer() {
    return by.map(initials -> new DatedRemark.Writer(initials, Clock.systemUTC()));
  }
}
