package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.rimebook.practice.bench.Winter;
import org.rimebook.practice.faults.FaultClass;
import org.rimebook.practice.faults.FaultPage;
import org.rimebook.practice.faults.FaultReport;
import org.rimebook.practice.faults.FaultScore;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Scores the checks on the bench. */
@Command(
    name = "faults",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description = "Score the checks on simulated winters with known faults and an empty notebook.",
    footerHeading = "%nExample:%n",
    footer = {"  rimebook practice faults --class capping --seeds 3"})
final class FaultsCommand implements Callable<Integer> {

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
      names = "--class",
      paramLabel = "NAME",
      converter = ClassConverter.class,
      completionCandidates = ClassNames.class,
      description = "Only this class; may be given again. One of: ${COMPLETION-CANDIDATES}.")
  private List<FaultClass> classes = List.of(FaultClass.values());

  @Option(names = "--list", description = "Also print every finding.")
  private boolean list;

  @Option(
      names = "--markdown",
      paramLabel = "FILE",
      description = "Also write the page about the checks.")
  private Path markdown;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (seeds < 1 || days < 1) {
      err.println("rimebook: --seeds and --days take a number of at least 1");
      err.flush();
      return ExitCode.WRONG_USE;
    }
    List<FaultScore> scores = new TwoAtATime<>(jobs(), err).results();
    if (list) {
      scores.forEach(score -> FaultPage.findings(score).forEach(out::println));
    }
    FaultReport report = new FaultReport(scores);
    report.byCheck().forEach(out::println);
    out.println();
    report.byClass().forEach(out::println);
    out.flush();
    return markdown == null ? ExitCode.DONE : write(report, err);
  }

  private List<TwoAtATime.Job<FaultScore>> jobs() {
    List<TwoAtATime.Job<FaultScore>> jobs = new ArrayList<>();
    for (FaultClass of : classes) {
      for (int i = 0; i < seeds; i++) {
        long seed = firstSeed + i;
        jobs.add(
            new TwoAtATime.Job<>(
                of.label() + ", seed " + seed, () -> FaultScore.of(of, seed, days)));
      }
    }
    return jobs;
  }

  private int write(FaultReport report, PrintWriter err) {
    String command = "rimebook practice " + arguments();
    try {
      Files.writeString(markdown, String.join("\n", FaultPage.of(command, report)) + "\n");
      return ExitCode.DONE;
    } catch (IOException e) {
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

  private String arguments() {
    return String.join(" ", spec.commandLine().getParseResult().originalArgs());
  }

  /** Reads a class by its name. */
  static final class ClassConverter implements ITypeConverter<FaultClass> {
    @Override
    public FaultClass convert(String text) {
      return Stream.of(FaultClass.values())
          .filter(c -> c.label().equals(text))
          .findFirst()
          .orElseThrow(() -> new TypeConversionException("there is no class '" + text + "'"));
    }
  }

  /** Names of the classes. */
  static final class ClassNames extends ArrayList<String> {
    private static final long serialVersionUID = 1;

    ClassNames() {
      super(Stream.of(FaultClass.values()).map(FaultClass::label).toList());
    }
  }
}
