package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
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
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

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

  @Option(
      names = "--markdown",
      paramLabel = "FILE",
      description = "Also write the page about the bench, without run times.")
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
    List<BenchReport> reports = new ArrayList<>();
    for (Variant variant : variants) {
      List<WinterScore> scores = new PracticeRun(winters(variant), err).scores();
      print(BenchReport.of(variant, scores, true), out);
      reports.add(BenchReport.of(variant, scores, false));
    }
    return markdown == null ? ExitCode.DONE : write(reports, err);
  }

  private List<Winter> winters(Variant variant) {
    List<Winter> winters = new ArrayList<>();
    for (Scenario scenario : scenarios) {
      for (int i = 0; i < seeds; i++) {
        winters.add(new Winter(scenario, variant, firstSeed + i, days));
      }
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

  private int write(List<BenchReport> reports, PrintWriter err) {
    String command =
        "rimebook " + String.join(" ", spec.commandLine().getParseResult().originalArgs());
    try {
      Files.writeString(markdown, String.join("\n", BenchPage.of(command, reports)) + "\n");
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

  /** Reads a class by its name. */
  static final class ScenarioConverter implements ITypeConverter<Scenario> {
    @Override
    public Scenario convert(String text) {
      return Stream.of(Scenario.values())
          .filter(s -> s.label().equals(text))
          .findFirst()
          .orElseThrow(() -> new TypeConversionException("there is no class '" + text + "'"));
    }
  }

  /** Reads a variant by its name. */
  static final class VariantConverter implements ITypeConverter<Variant> {
    @Override
    public Variant convert(String text) {
      return Stream.of(Variant.values())
          .filter(v -> v.label().equals(text))
          .findFirst()
          .orElseThrow(() -> new TypeConversionException("there is no variant '" + text + "'"));
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
