package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.rimebook.practice.bench.Winter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Which simulated winters are scored, and where the page about it goes. */
final class WinterOptions {

  @Option(
      names = "--seeds",
      paramLabel = "N",
      defaultValue = "5",
      description = "Winters of each class; 5 when not given.")
  private int seeds;

  @Option(
      names = "--first-seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of the first of them; 1 when not given.")
  private long firstSeed;

  @Option(
      names = "--days",
      paramLabel = "N",
      defaultValue = "" + Winter.HALF_A_YEAR,
      description = "Length of a winter in days; half a year when not given.")
  private int days;

  @Option(
      names = "--markdown",
      paramLabel = "FILE",
      description = "Also write the page in the manual, without run times.")
  private Path markdown;

  /** Whether the numbers can be used; says so when not. */
  boolean usable(PrintWriter err) {
    boolean usable = seeds >= 1 && days >= 1;
    if (!usable) {
      err.println("rimebook: --seeds and --days take a number of at least 1");
      err.flush();
    }
    return usable;
  }

  /** Seeds of the winters of a class. */
  LongStream seeds() {
    return LongStream.range(firstSeed, firstSeed + seeds);
  }

  /** Length of a winter [d]. */
  int days() {
    return days;
  }

  /** A page that knows the command it was made by. */
  interface Page {

    List<String> lines(String command);
  }

  /** Writes the page, if one is wanted. */
  int write(CommandSpec spec, Page page) {
    if (markdown == null) {
      return ExitCode.DONE;
    }
    String arguments = String.join(" ", spec.root().commandLine().getParseResult().originalArgs());
    try {
      Files.writeString(markdown, String.join("\n", page.lines("rimebook " + arguments)) + "\n");
      return ExitCode.DONE;
    } catch (IOException e) {
      PrintWriter err = spec.commandLine().getErr();
      err.println(
          "rimebook: "
              + markdown
              + ": can't be written ("
              + e.getMessage()
              + "). Name another file with --markdown");
      err.flush();
      return ExitCode.NOT_MADE;
    }
  }
}
