package org.rimebook.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.rimebook.practice.faults.FaultClass;
import org.rimebook.practice.faults.FaultPage;
import org.rimebook.practice.faults.FaultReport;
import org.rimebook.practice.faults.FaultScore;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

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

  @Mixin private WinterOptions options;

  @Option(
      names = "--class",
      paramLabel = "NAME",
      converter = ClassConverter.class,
      completionCandidates = ClassNames.class,
      description = "Only this class; may be given again. One of: ${COMPLETION-CANDIDATES}.")
  private List<FaultClass> classes = List.of(FaultClass.values());

  @Option(
      names = "--list",
      description = "Also print every finding, and every fault that was missed.")
  private boolean list;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (!options.usable(err)) {
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
    return options.write(spec, command -> FaultPage.of(command, report));
  }

  private List<TwoAtATime.Job<FaultScore>> jobs() {
    List<TwoAtATime.Job<FaultScore>> jobs = new ArrayList<>();
    for (FaultClass of : classes) {
      options.seeds().forEach(seed -> jobs.add(job(of, seed)));
    }
    return jobs;
  }

  private TwoAtATime.Job<FaultScore> job(FaultClass of, long seed) {
    int days = options.days();
    return new TwoAtATime.Job<>(of.label() + ", seed " + seed, () -> FaultScore.of(of, seed, days));
  }

  /** Reads a class by its name. */
  static final class ClassConverter implements ITypeConverter<FaultClass> {
    @Override
    public FaultClass convert(String text) {
      return Labels.named(text, FaultClass.values(), FaultClass::label, "class");
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
