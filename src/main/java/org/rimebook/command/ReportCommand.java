package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rimebook.export.OutputFolder;
import org.rimebook.export.SeasonExport;
import org.rimebook.export.neighbour.Neighbours;
import org.rimebook.export.report.NeighbourSection;
import org.rimebook.export.report.ReportAhead;
import org.rimebook.export.report.SeasonReport;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonDepths;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.FileFault;
import org.rimebook.station.InputException;
import org.rimebook.station.Progress;
import org.rimebook.totals.Resolution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the report of a season. */
@Command(
    name = "report",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description = "Write the report of a season, which a reviewer signs, as PDF.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook report my-gauge-2024-25 --out my-gauge-2024-25.pdf",
      "  rimebook report my-gauge-2024-25 --out my-gauge-2024-25.pdf --hours",
      "  rimebook report my-gauge-2024-25 --out reviewed.pdf --neighbour valley/daily.csv"
    })
final class ReportCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description = "File to write, its name ending in .pdf.")
  private Path out;

  @Option(names = "--hours", description = "With every hour, as an appendix.")
  private boolean hours;

  @Option(
      names = "--neighbour",
      paramLabel = "FILE",
      description =
          "Also compare with a neighbour's daily table; when given again, their mean counts.")
  private List<Path> neighbours = List.of();

  @Option(
      names = "--resolution",
      paramLabel = "MM",
      defaultValue = "0.1",
      converter = TotalsCommand.ResolutionConverter.class,
      description = "Smallest step of a printed total: 0.1 (default) or 0.01 mm.")
  private Resolution resolution;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    PrintWriter err = spec.commandLine().getErr();
    if (!out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
      return say(err, "--out " + out + ": the name of a report ends in .pdf", ExitCode.WRONG_USE);
    }
    Optional<Neighbours> beside;
    try {
      beside = neighbours.isEmpty() ? Optional.empty() : Optional.of(Neighbours.read(neighbours));
    } catch (InputException e) {
      RimebookCommand.printProblems(err, e);
      return ExitCode.NOT_MADE;
    } catch (IOException e) {
      return say(err, e.getMessage(), ExitCode.NOT_MADE);
    }
    return write(beside);
  }

  private int write(Optional<Neighbours> beside) throws InputException {
    PrintWriter err = spec.commandLine().getErr();
    ReportAhead.getReady();
    Season opened = Season.open(season);
    Path folder = Optional.ofNullable(out.toAbsolutePath().getParent()).orElse(out);
    if (SeasonExport.amongTheRecord(opened, season, folder)) {
      return say(
          err,
          out + " lies among the logger files of the season; name another folder",
          ExitCode.WRONG_USE);
    }
    try {
      OutputFolder.write(out, pdf(opened, beside));
    } catch (IOException e) {
      return say(
          err,
          out + ": not written (" + FileFault.words(e, out) + "). Name another file",
          ExitCode.NOT_MADE);
    }
    spec.commandLine().getOut().println("written " + out);
    spec.commandLine().getOut().flush();
    return ExitCode.DONE;
  }

  private byte[] pdf(Season opened, Optional<Neighbours> beside) throws InputException {
    SeasonDepths depths = SeasonDepths.of(opened, Progress.NONE);
    ReportAhead ahead = ReportAhead.of(depths, Progress.NONE);
    SeasonResult result = SeasonResult.of(depths, Progress.NONE);
    SeasonReport report = SeasonReport.of(result, result.totals(resolution), ahead, Progress.NONE);
    if (beside.isPresent()) {
      report = report.with(new NeighbourSection(result, beside.get()));
    }
    return (hours ? report.withHours() : report).pdf(Progress.NONE);
  }

  private static int say(PrintWriter err, String words, int code) {
    err.println("rimebook: " + words);
    err.flush();
    return code;
  }
}
