package org.rimebook.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Optional;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.season.why.Explanation;
import org.rimebook.station.InputException;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/** Finds one total of a season and prints why it is what it is. */
record WhyRun(Path season, TemporalAccessor at, boolean day, Resolution resolution) {

  int run(PrintWriter print, PrintWriter err) throws InputException {
    Season opened = Season.open(season);
    long atMs = StationInstant.of(at, opened.sheet());
    SeasonResult result = SeasonResult.of(opened);
    Totals totals = result.totals(resolution);
    List<TotalRow> rows = day ? totals.daily() : totals.hourly();
    Optional<TotalRow> row = rows.stream().filter(r -> r.interval().contains(atMs)).findFirst();
    if (row.isEmpty()) {
      SeasonRecord record = opened.record();
      String span =
          new LabelledLines(opened.sheet().utcOffset())
              .span(record.stampMs(0), record.stampMs(record.size() - 1));
      err.println(
          "rimebook: --at lies outside the record, which runs from "
              + span
              + ". Name a time within it");
      err.flush();
      return ExitCode.WRONG_USE;
    }
    ExplanationLines.of(
            Explanation.of(result, rows, row.get(), resolution), opened.sheet().utcOffset())
        .forEach(print::println);
    print.flush();
    return ExitCode.DONE;
  }
}
