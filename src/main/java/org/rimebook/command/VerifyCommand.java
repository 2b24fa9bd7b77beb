package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.rimebook.export.FurtherFile;
import org.rimebook.export.report.ReportFile;
import org.rimebook.export.standard.StandardFormat;
import org.rimebook.export.verify.FileVerdict;
import org.rimebook.export.verify.Verification;
import org.rimebook.season.Season;
import org.rimebook.station.FileFault;
import org.rimebook.station.InputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether exported tables follow from a season folder. */
@Command(
    name = "verify",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description = {
      "Compute the tables of a season again and say, byte for byte, whether those in a folder follow"
          + " from it.",
      "When they don't: where each differs first, and which input changed. Nothing is written."
    },
    footerHeading = "%nExample:%n",
    footer = {
      "  rimebook verify my-gauge-2024-25 --against tables",
      "",
      "Exit codes: 0 they follow; 1 they don't; 2 wrong use; 3 the season can't be read."
    })
final class VerifyCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(
      names = "--against",
      required = true,
      paramLabel = "DIR",
      description = "Folder that 'rimebook totals' wrote into.")
  private Path against;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    PrintWriter err = spec.commandLine().getErr();
    if (!Verification.hasTables(against)) {
      err.println(
          "rimebook: "
              + against
              + (Files.isDirectory(against) ? ": holds no table" : ": isn't a folder")
              + ". Name with --against the folder that 'rimebook totals' wrote into");
      err.flush();
      return ExitCode.WRONG_USE;
    }
    try {
      Season opened = Season.open(season);
      Verification found = Verification.of(opened, against, further());
      print(opened.sheet().name(), found, spec.commandLine().getOut());
      return found.follows() ? ExitCode.DONE : ExitCode.NOT_MADE;
    } catch (IOException e) {
      err.println(
          "rimebook: "
              + against
              + ": can't be read ("
              + FileFault.words(e, against)
              + "). Check that you may read the tables");
      err.flush();
      return ExitCode.NOT_MADE;
    }
  }

  private void print(String station, Verification found, PrintWriter out) {
    out.println(
        station
            + ": the tables in "
            + against
            + (found.follows() ? " follow" : " don't follow")
            + " from "
            + season
            + ", at "
            + found.resolution().mm()
            + " mm");
    for (FileVerdict file : found.files()) {
      out.println(
          "  "
              + file.file()
              + " "
              + file.outcome().words()
              + (file.words().isEmpty() ? "" : ": " + file.words()));
    }
    if (!found.changes().isEmpty()) {
      out.println("Changed since they were made:");
      found.changes().forEach(change -> out.println("  " + change));
    } else if (!found.follows()) {
      out.println(nothingChanged(found));
    }
    out.flush();
  }

  private static String nothingChanged(Verification found) {
    return found.inputsKnown()
        ? "By the digests in season.json no input changed: the files themselves were."
        : "season.json is missing or can't be read, so which input changed isn't known.";
  }

  private static List<FurtherFile> further() {
    return Stream.concat(Stream.of(new ReportFile()), Stream.of(StandardFormat.values())).toList();
  }
}
