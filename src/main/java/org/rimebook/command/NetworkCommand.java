package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rimebook.export.network.NetworkExport;
import org.rimebook.export.network.NetworkRow;
import org.rimebook.export.network.NetworkRun;
import org.rimebook.export.network.SeasonFolder;
import org.rimebook.export.network.SeasonFolders;
import org.rimebook.station.FileFault;
import org.rimebook.station.Problem;
import org.rimebook.totals.Resolution;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the totals of every season below a folder. */
@Command(
    name = "network",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description = {
      "Make the totals of every season folder below a folder, several at a time, each the same bytes"
          + " as 'rimebook totals --no-report' makes of it alone, with a table and a figure of all.",
      "A season whose inputs and version haven't changed since isn't made again, so a run that was"
          + " broken off goes on when started again."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook network gauges --out tables",
      "  rimebook network gauges --out tables --at-a-time 1",
      "",
      "Exit codes: 0 every season was made; 1 some couldn't be, network.csv says which and why;",
      "2 wrong use."
    })
final class NetworkCommand implements Callable<Integer> {

  @Parameters(paramLabel = "ROOT", description = "Folder with season folders in it, at any depth.")
  private Path root;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write into, each season below it as it lies below ROOT.")
  private Path out;

  @Option(
      names = "--resolution",
      paramLabel = "MM",
      defaultValue = "0.1",
      converter = TotalsCommand.ResolutionConverter.class,
      description = "Smallest step of a printed total: 0.1 (default) or 0.01 mm.")
  private Resolution resolution;

  @Option(
      names = "--at-a-time",
      paramLabel = "N",
      description =
          "Most seasons at a time; as many as there are processors when not given. Fewer run where"
              + " memory is short.")
  private int atATime = Runtime.getRuntime().availableProcessors();

  @Option(names = "--anew", description = "Make also the seasons that haven't changed.")
  private boolean anew;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter err = spec.commandLine().getErr();
    if (atATime < 1) {
      return refused("--at-a-time takes a number of at least 1", ExitCode.WRONG_USE);
    }
    if (!Files.isDirectory(root)) {
      return refused(
          root + ": isn't a folder. Name one with season folders in it", ExitCode.WRONG_USE);
    }
    SeasonFolders found;
    try {
      found = SeasonFolders.below(root, out);
    } catch (IOException e) {
      return refused(
          root + ": can't be looked into (" + FileFault.words(e, root) + ")", ExitCode.WRONG_USE);
    }
    found.problems().forEach(problem -> err.println("rimebook: " + problem));
    if (found.seasons().isEmpty()) {
      return refused(
          root + ": no folder in it holds station.json. Name one with season folders in it",
          ExitCode.WRONG_USE);
    }
    Optional<SeasonFolder> around =
        found.seasons().stream().filter(this::isAroundTables).findFirst();
    if (around.isPresent()) {
      return refused(
          out
              + " lies in the season folder "
              + around.get().name()
              + "; tables written there could be read as its record. Name another folder with"
              + " --out",
          ExitCode.WRONG_USE);
    }
    NetworkProgress progress = new NetworkProgress(found.seasons().size(), err, System::nanoTime);
    NetworkRun.Settings settings = new NetworkRun.Settings(resolution, atATime, anew);
    List<NetworkRow> rows = new NetworkRun(out, settings, progress).rows(found.seasons());
    return written(rows, found.problems());
  }

  private boolean isAroundTables(SeasonFolder season) {
    Path folder = season.folder().toAbsolutePath().normalize();
    return out.toAbsolutePath().normalize().startsWith(folder);
  }

  private int written(List<NetworkRow> rows, List<Problem> problems) {
    try {
      NetworkExport.write(rows, out);
    } catch (IOException e) {
      return refused(
          out
              + ": can't be written to ("
              + FileFault.words(e, out)
              + "). Name another folder with --out",
          ExitCode.NOT_MADE);
    }
    PrintWriter print = spec.commandLine().getOut();
    List<NetworkRow> failed = rows.stream().filter(row -> row.error().isPresent()).toList();
    print.println(
        rows.size()
            - failed.size()
            + " of "
            + rows.size()
            + " seasons made, see "
            + out.resolve(NetworkExport.TABLE)
            + " and "
            + NetworkExport.FIGURE);
    failed.forEach(row -> print.println("  " + row.folder() + ": " + row.error().orElse("")));
    print.flush();
    return failed.isEmpty() && problems.isEmpty() ? ExitCode.DONE : ExitCode.NOT_MADE;
  }

  private int refused(String words, int code) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("rimebook: " + words);
    err.flush();
    return code;
  }
}
