package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Optional;
import org.rimebook.export.OutputFolder;
import org.rimebook.export.SeasonExport;
import org.rimebook.export.figure.FigureFile;
import org.rimebook.export.figure.FigureFormat;
import org.rimebook.export.figure.FigureSpec;
import org.rimebook.export.figure.FigureStrip;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.record.SeasonRecord;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.FileFault;
import org.rimebook.station.InputException;
import org.rimebook.station.Interval;
import org.rimebook.totals.Resolution;

/** Draws one view of a season and writes it. */
record FigureRun(Path season, Path out, List<FigureStrip> strips, Ends ends, Size size) {

  private static final int LEAST_DPI = 36;
  private static final int MOST_DPI = 2400;
  private static final double MOST_PIXELS = 100e6;
  private static final double MM_PER_INCH = 25.4;

  /**
   * Where the view starts and ends.
   *
   * @param from start; empty = that of the record
   * @param to end; empty = that of the record
   */
  record Ends(Optional<TemporalAccessor> from, Optional<TemporalAccessor> to) {}

  /**
   * How large it is.
   *
   * @param widthMm width [mm]
   * @param heightMm height [mm]
   * @param dpi dots an inch, for pixels
   */
  record Size(double widthMm, double heightMm, int dpi) {

    private Optional<String> fault(FigureFormat format) {
      if (!FigureSpec.fits(widthMm) || !FigureSpec.fits(heightMm)) {
        return Optional.of("--width-mm and --height-mm go from 30 to 2000");
      }
      double pixels = widthMm * heightMm * dpi * dpi / (MM_PER_INCH * MM_PER_INCH);
      if (format == FigureFormat.PNG
          && (dpi < LEAST_DPI || dpi > MOST_DPI || pixels > MOST_PIXELS)) {
        return Optional.of(
            "--dpi goes from 36 to 2400, and a PNG holds up to a hundred million dots: ask for"
                + " fewer, or for .svg or .pdf, which have none");
      }
      return Optional.empty();
    }
  }

  int run(PrintWriter print, PrintWriter err) throws InputException {
    Optional<FigureFormat> format = FigureFormat.of(out.toString());
    Optional<String> fault =
        format.isEmpty()
            ? Optional.of("--out " + out + ": the name of a figure ends in .svg, .pdf or .png")
            : size.fault(format.get());
    if (fault.isPresent()) {
      return refuse(err, fault.get());
    }
    Season opened = Season.open(season);
    Optional<Interval> span = span(opened);
    if (span.isEmpty()) {
      return refuse(err, "--from and --to leave nothing of the record to show; move them apart");
    }
    Path folder = Optional.ofNullable(out.toAbsolutePath().getParent()).orElse(out);
    if (SeasonExport.amongTheRecord(opened, season, folder)) {
      return refuse(err, out + " lies among the logger files of the season; name another folder");
    }
    SeasonResult result = SeasonResult.of(opened);
    FigureSpec spec = new FigureSpec(span.get(), strips, size.widthMm, size.heightMm);
    SeasonFigure figure = SeasonFigure.of(result, result.totals(Resolution.TENTH), spec);
    try {
      OutputFolder.write(out, FigureFile.bytes(figure, format.get(), size.dpi));
    } catch (IOException e) {
      err.println(
          "rimebook: "
              + out
              + ": can't be written ("
              + FileFault.words(e, out)
              + "). Name another file");
      err.flush();
      return ExitCode.NOT_MADE;
    }
    print.println("written " + out);
    print.flush();
    return ExitCode.DONE;
  }

  private static int refuse(PrintWriter err, String words) {
    err.println("rimebook: " + words);
    err.flush();
    return ExitCode.WRONG_USE;
  }

  /** What is shown: what was asked for, as far as there is a record; empty when nothing is left. */
  private Optional<Interval> span(Season opened) {
    SeasonRecord record = opened.record();
    long first = record.stampMs(0);
    long last = record.stampMs(record.size() - 1);
    long from = ends.from.map(t -> StationInstant.of(t, opened.sheet())).orElse(first);
    long to = ends.to.map(t -> StationInstant.of(t, opened.sheet())).orElse(last);
    return to > from && to > first && from < last
        ? Optional.of(new Interval(from, to))
        : Optional.empty();
  }
}
