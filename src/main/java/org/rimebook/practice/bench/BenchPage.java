package org.rimebook.practice.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The page about the bench: what it does, its classes and columns, and the tables of a run. */
public final class BenchPage {

  private static final List<String> HEAD =
      List.of(
          "# The bench",
          "",
          "What follows is written by `rimebook practice --markdown`: half-year winters of each",
          "class, drawn from seeds, whose true catch is known. The estimator runs as it does for",
          "any season and is judged by its printed hundredths. Beside it, on the same screened",
          "depths, the published methods: the neutral aggregating filter (P* = 0.1 mm on",
          "five-minute medians), three-wire pairwise comparison, the 0.2 mm high-water mark, and",
          "Gaussian smoothing with a threshold; and an oracle that is told which hours are wet and",
          "takes boundary means over 5 min, or 15 min in wind.",
          "",
          "## Classes",
          "");

  private static final List<String> MIDDLE =
      List.of(
          "",
          "What a class leaves open differs from seed to seed: sampling (1, 2 and 5 min, 30 s),",
          "size, spectrum and common share of the noise, calibrations, charge, climate, storms",
          "(two generators in turn), the temperature coefficient and lag of each wire. Every",
          "winter has single spikes, wires that read about 0.004 % less per °C, and tilt.",
          "",
          "## Columns",
          "",
          "Medians over the seeds, unless said otherwise. Hours that have only a common total",
          "(after a gap or late catch) are one span, for every method; what has no total isn't",
          "scored but counted as unknown.",
          "",
          "- **hour mm, day mm**: root mean square error of hours and of climatological days, wet",
          "  and dry; **÷ filter, ÷ oracle**: in parts of the neutral aggregating filter's and of",
          "  the oracle's, season by season.",
          "- **bias %**: season total less truth; **± bias %**: its size.",
          "- **false mm**: catch in dry hours in half a year; **missed mm**: what fell in wet hours",
          "  printed as 0.00.",
          "- **1u %, 2u %**: wet hours and days of all seeds whose error is at most one or two",
          "  stated standard uncertainties; **seasons**: the same for season totals, counted;",
          "  **error in u**: error of the season total in its own uncertainty.");

  private BenchPage() {}

  /**
   * The page.
   *
   * @param command the command that makes it again
   * @param reports reports without run times, by variant
   */
  public static List<String> of(String command, List<BenchReport> reports) {
    List<String> lines = new ArrayList<>(HEAD);
    for (Scenario scenario : Scenario.values()) {
      lines.add("- **" + scenario.label() + "**: " + scenario.words() + ".");
    }
    lines.addAll(MIDDLE);
    for (BenchReport report : reports) {
      lines.addAll(section(report));
    }
    lines.addAll(List.of("", "Made by `" + command + "`."));
    return lines;
  }

  private static List<String> section(BenchReport report) {
    Stream<String> title =
        Stream.of("", "## " + report.variant().label() + ": " + report.variant().words(), "");
    return Stream.of(
            title,
            report.errors().stream(),
            Stream.of(""),
            report.honesty().stream(),
            Stream.of(""),
            report.methods().stream())
        .flatMap(lines -> lines)
        .toList();
  }
}
