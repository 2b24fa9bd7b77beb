package org.rimebook.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.rimebook.practice.bench.BenchPage;
import org.rimebook.practice.bench.BenchReport;
import org.rimebook.practice.bench.Scenario;
import org.rimebook.practice.bench.Variant;
import org.rimebook.practice.bench.Winter;
import org.rimebook.practice.bench.WinterScore;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Scores the estimator on the bench. */
@Command(
    name = "practice",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    subcommands = FaultsCommand.class,
    description =
        "Score the estimator on simulated winters with known truth, beside published methods.",
    footerHeading = "%nExample:%n",
    footer = {"  rimebook practice --class calm --class windy --seeds 3"})
final class PracticeCommand implements Callable<Integer> {

  @Mixin private WinterOptions options;

  @Option(
      names = "--class",
      paramLabel = "NAME",
      converter = ScenarioConverter.class,
      description = "Only this class; may be given again. One of: ${COMPLETION-CANDIDATES}.",
      completionCandidates = ScenarioNames.class)
  private List<Scenario> scenarios = List.of(Scenario.values());

  @Option(
      names = "--variant",
      paramLabel = "NAME",
      converter = VariantConverter.class,
      description =
          "What is otherwise; may be given again; plain when not given. One of:"
              + " ${COMPLETION-CANDIDATES}.",
      completionCandidates = VariantNames.class)
  private List<Variant> variants = List.of(Variant.PLAIN);

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (!options.usable(err)) {
      return ExitCode.WRONG_USE;
    }
    List<BenchReport> reports = new ArrayList<>();
    for (Variant variant : variants) {
      List<WinterScore> scores = new PracticeRun(winters(variant), err).scores();
      print(BenchReport.of(variant, scores, true), out);
      reports.add(BenchReport.of(variant, scores, false));
    }
    return options.write(spec, command -> BenchPage.of(command, reports));
  }

  private List<Winter> winters(Variant variant) {
    List<Winter> winters = new ArrayList<>();
    for (Scenario scenario : scenarios) {
      options
          .seeds()
          .forEach(seed -> winters.add(new Winter(scenario, variant, seed, options.days())));
    }
    return winters;
  }

  private static void print(BenchReport report, PrintWriter out) {
    out.println(report.variant().label() + ": " + report.variant().words());
    Stream.of(report.errors(), report.honesty(), report.methods())
        .forEach(
            lines -> {
              out.println();
              lines.forEach(out::println);
            });
    out.println();
    out.flush();
  }

  /** Reads a class by its name. */
  static final class ScenarioConverter implements ITypeConverter<Scenario> {
    @Override
    public Scenario convert(String text) {
      return Labels.named(text, Scenario.values(), Scenario::label, "class");
    }
  }

  /** Reads a variant by its name. */
  static final class VariantConverter implements ITypeConverter<Variant> {
    @Override
    public Variant convert(String text) {
      return Labels.named(text, Variant.values(), Variant::label, "variant");
    }
  }

  /** Names of the classes. */
  static final class ScenarioNames extends ArrayList<String> {
    private static final long serialVersionUID = 1;

    ScenarioNames() {
      super(Stream.of(Scenario.values()).map(Scenario::label).toList());
    }
  }

  /** Names of the variants. */
  static final class VariantNames extends ArrayList<String> {
    private static final long serialVersionUID = 1;

    VariantNames() {
      super(Stream.of(Variant.values()).map(Variant::label).toList());
    }
  }
}
