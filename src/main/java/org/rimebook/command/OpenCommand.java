package org.rimebook.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens the window. */
@Command(
    name = "open",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    description = "Open the window: a season, or the start page.")
final class OpenCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "SEASON",
      description = "the season folder; without it the start page, from where one is opened")
  private Path season;

  private final WindowOpener window;

  OpenCommand(WindowOpener window) {
    this.window = window;
  }

  @Override
  public Integer call() {
    if (window.open(Optional.ofNullable(season))) {
      return ExitCode.DONE;
    }
    spec.commandLine()
        .getErr()
        .println(
            "rimebook: there is no screen to open a window on. Set DISPLAY to one, or use 'totals'"
                + " and 'why', which need none");
    spec.commandLine().getErr().flush();
    return ExitCode.NOT_MADE;
  }
}
