package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rimebook.export.OutputFolder;
import org.rimebook.export.SeasonExport;
import org.rimebook.export.StationTime;
import org.rimebook.export.report.ReportAhead;
import org.rimebook.export.report.SeasonReport;
import org.rimebook.export.standard.StandardFormat;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonDepths;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.FileFault;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.station.Progress;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;

/**
 * Makes and writes the totals of one season, and says what came of it.
 *
 * @param season the season folder
 * @param out where to write
 * @param resolution resolution of the totals
 * @param report whether the report is written beside them
 * @param also open standards in which they are written too
 */
record TotalsRun(
    Path season, Path out, Resolution resolution, boolean report, List<StandardFormat> also) {

  int run(PrintWriter print, PrintWriter err) throws InputException {
    if (report) {
      ReportAhead.getReady();
    }
    Season opened = Season.open(season);
    if (SeasonExport.amongTheRecord(opened, season, out)) {
      err.println(
          "rimebook: "
              + out
              + " holds logger files of the season; tables written there would be read as such."
              + " Name another folder with --out");
      err.flush();
      return ExitCode.WRONG_USE;
    }
    SeasonDepths depths = SeasonDepths.of(opened, Progress.NONE);
    Optional<ReportAhead> ahead =
        report ? Optional.of(ReportAhead.of(depths, Progress.NONE)) : Optional.empty();
    SeasonResult result = SeasonResult.of(depths, Progress.NONE);
    tell(err, result);
    try {
      Totals totals = result.totals(resolution);
      OutputFolder.write(out, files(result, totals, ahead));
      print(print, opened, totals);
      return ExitCode.DONE;
    } catch (IOException e) {
      err.println(
          "rimebook: "
              + out
              + ": can't be written to ("
              + FileFault.words(e, out)
              + "). Name another folder with --out; nothing was left half-written");
      err.flush();
      return ExitCode.NOT_MADE;
    }
  }

  private static void tell(PrintWriter err, SeasonResult result) {
    for (String note : result.notes()) {
      err.println("rimebook: note: " + note);
    }
    for (String alert : result.calibrations().alerts()) {
      err.println("rimebook: alert: " + alert);
    }
    err.flush();
  }

  private Map<String, byte[]> files(
      SeasonResult result, Totals totals, Optional<ReportAhead> ahead) {
    Map<String, byte[]> files = SeasonExport.files(result, totals);
    also.forEach(format -> files.put(format.fileName(), format.bytes(result, resolution)));
    if (ahead.isPresent()) {
      SeasonReport made = SeasonReport.of(result, totals, ahead.get(), Progress.NONE);
      files.put(SeasonReport.FILE, made.pdf(Progress.NONE));
    }
    return files;
  }

  private void print(PrintWriter print, Season opened, Totals totals) {
    ZoneOffset offset = opened.sheet().utcOffset();
    Interval first = totals.hourly().get(0).interval();
    Interval last = totals.hourly().get(totals.hourly().size() - 1).interval();
    print.println(
        opened.sheet().name()
            + ", "
            + StationTime.iso(first.fromMs(), offset)
            + " to "
            + StationTime.iso(last.toMs(), offset));
    OptionalLong season = totals.seasonUnits();
    print.println(
        season.isPresent()
            ? "season  " + resolution.toMm(season.getAsLong()) + " mm"
            : "season  not known: no hour has a total");
    print.println("days    " + qualities(totals.daily().stream()));
    print.println("hours   " + qualities(totals.hourly().stream()));
    print.println(
        "written "
            + out.resolve("hourly.csv")
            + ", daily.csv, season.json, datapackage.json"
            + (report ? ", " + SeasonReport.FILE : "")
            + also.stream().map(format -> ", " + format.fileName()).collect(Collectors.joining()));
    print.flush();
  }

  private static String qualities(Stream<TotalRow> rows) {
    Map<Quality, Long> count =
        rows.collect(
            Collectors.groupingBy(
                TotalRow::quality, () -> new EnumMap<>(Quality.class), Collectors.counting()));
    return count.entrySet().stream()
        .map(e -> e.getValue() + " " + e.getKey().code())
        .collect(Collectors.joining(", "));
  }
}
