package org.rimebook.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.rimebook.export.FindingsJson;
import org.rimebook.findings.Finding;
import org.rimebook.findings.Findings;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.InputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists what looks wrong in a season and nobody has decided on. */
@Command(
    name = "findings",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "List what looks wrong in a season, why, and the notebook entry that would settle it.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook findings my-gauge-2024-25",
      "  rimebook findings my-gauge-2024-25 --strongest-first",
      "  rimebook findings my-gauge-2024-25 --json"
    })
final class FindingsCommand implements Callable<Integer> {

  @Parameters(paramLabel = "SEASON", description = "Season folder: station.json and records/.")
  private Path season;

  @Option(names = "--json", description = "As JSON, each with the entry it proposes.")
  private boolean json;

  @Option(
      names = "--strongest-first",
      description = "The surest first; in the order of time when not given.")
  private boolean strongestFirst;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    SeasonResult result = SeasonResult.of(Season.open(season));
    PrintWriter out = spec.commandLine().getOut();
    List<Finding> inOrder =
        strongestFirst ? result.findings().strongestFirst() : result.findings().open();
    if (json) {
      out.print(FindingsJson.text(result.season().sheet(), new Findings(inOrder)));
    } else {
      FindingLines.of(inOrder, result.season().sheet()).forEach(out::println);
    }
    out.flush();
    return ExitCode.DONE;
  }
}
