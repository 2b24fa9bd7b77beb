package org.rimebook.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * The program's command line. Without a command it makes the totals of a sample season where the
 * sample seasons lie, and opens the window elsewhere.
 */
@Command(
    name = "rimebook",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description =
        "From the frequencies of a vibrating-wire precipitation gauge to hourly and daily totals.",
    subcommands = {
      TotalsCommand.class,
      NetworkCommand.class,
      VerifyCommand.class,
      WhyCommand.class,
      InspectCommand.class,
      FindingsCommand.class,
      ReportCommand.class,
      FigureCommand.class,
      NeighbourCommand.class,
      NewCommand.class,
      CalibrateCommand.class,
      TemperatureCommand.class,
      ChargeCommand.class,
      InstallationCommand.class,
      NextVisitCommand.class,
      PracticeCommand.class
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rimebook open my-gauge-2024-25",
      "      review the season in the window: strips, marks, totals, why",
      "  rimebook new my-gauge-2024-25",
      "      draft a station sheet from the header of the logger files in my-gauge-2024-25",
      "  rimebook inspect my-gauge-2024-25",
      "      what is in the season: sampling, coverage, gaps, wires, visits, lines not taken",
      "  rimebook totals my-gauge-2024-25 --out tables",
      "      write hourly.csv, daily.csv, season.json, datapackage.json and report.pdf into tables",
      "  rimebook totals my-gauge-2024-25 --out tables --resolution 0.01",
      "  rimebook network gauges --out tables",
      "      the totals of every season folder below gauges, several at a time, with a table of all",
      "  rimebook verify my-gauge-2024-25 --against tables",
      "      say whether tables follow from the season folder, and what changed if they don't",
      "  rimebook why my-gauge-2024-25 --at 2025-01-15T10:00-07:00",
      "      explain one hour: readings, wires, noise, drift, entries, uncertainty",
      "  rimebook findings my-gauge-2024-25",
      "      what looks wrong and is still to be decided, with the entry that would settle it",
      "  rimebook report my-gauge-2024-25 --out report.pdf --hours",
      "      write the report alone, with every hour as an appendix",
      "  rimebook figure my-gauge-2024-25 --out season.svg --show depth,catch,daily",
      "      write a view of the season as a figure: SVG, PDF or PNG",
      "  rimebook neighbour my-gauge-2024-25 --with valley/daily.csv",
      "      compare daily totals with a neighbouring station: ratio, double-mass curve, months",
      "  rimebook practice --class calm --seeds 3",
      "      score the estimator on simulated winters with known truth",
      "",
      "Exit codes: 0 done; 1 the season opened but something couldn't be made;",
      "2 wrong use; 3 the season can't be read."
    })
public final class RimebookCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  private final WindowOpener window;

  private RimebookCommand(WindowOpener window) {
    this.window = window;
  }

  /**
   * The command line, ready to execute arguments.
   *
   * @param window opens the window
   */
  public static CommandLine commandLine(WindowOpener window) {
    CommandLine line = new CommandLine(new RimebookCommand(window));
    line.addSubcommand(new OpenCommand(window));
    line.setExecutionExceptionHandler(
        (exception, commandLine, parsed) -> {
          if (exception instanceof InputException input) {
            printProblems(commandLine.getErr(), input);
            return ExitCode.UNREADABLE;
          }
          throw exception;
        });
    return line;
  }

  static void printProblems(PrintWriter err, InputException input) {
    for (Problem problem : input.problems()) {
      err.println("rimebook: " + problem);
    }
    err.flush();
  }

  @Override
  public Integer call() throws InputException {
    Path samples = Path.of("sample-sets");
    SampleRun run = new SampleRun(samples, Path.of("target", "sample-totals"));
    if (!run.possible() && window.open(Optional.empty())) {
      return ExitCode.DONE;
    }
    if (!run.possible()) {
      spec.commandLine().usage(spec.commandLine().getErr());
      return ExitCode.WRONG_USE;
    }
    return run.run(spec.commandLine().getOut(), spec.commandLine().getErr());
  }
}
