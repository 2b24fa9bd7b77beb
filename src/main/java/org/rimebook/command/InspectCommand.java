package org.rimebook.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what is in a season, in a screenful. */
@Command(
    name = "inspect",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "Show what is in a season: sampling, coverage, gaps, wires, visits, lines not taken.",
    footerHeading = "%nExample:%n",
    footer = {"  rimebook inspect my-gauge-2024-25"})
final class InspectCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    SeasonResult result = SeasonResult.of(Season.open(season));
    PrintWriter out = spec.commandLine().getOut();
    new Inspection(result).lines().forEach(out::println);
    out.flush();
    return ExitCode.DONE;
  }
}
