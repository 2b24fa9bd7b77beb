package org.rimebook.practice.faults;

import static org.rimebook.practice.bench.Table.number;
import static org.rimebook.practice.bench.Table.signed;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.rimebook.findings.FindingKind;
import org.rimebook.practice.bench.Table;

/** Tables of how well faults are found: by check, and by class. */
public final class FaultReport {

  private final List<FaultScore> scores;

  /**
   * @param scores winters of any classes
   */
  public FaultReport(Collection<FaultScore> scores) {
    this.scores = List.copyOf(scores);
  }

  /** One row a check that had something to find or found something. */
  public List<String> byCheck() {
    Table table =
        new Table(
            "check",
            "faults",
            "found",
            "recall",
            "right",
            "doubtful",
            "wrong",
            "precision",
            "wrong in");
    for (FindingKind kind : FindingKind.values()) {
      Tally tally = scores.stream().map(s -> s.tallies().get(kind)).reduce(Tally.NONE, Tally::plus);
      if (tally.due() + tally.raised() > 0) {
        table.add(
            kind.code(),
            "" + tally.due(),
            "" + tally.found(),
            number(tally.recall(), 2),
            "" + tally.right(),
            "" + tally.doubtful(),
            "" + tally.wrong(),
            number(tally.precision(), 2),
            wrongIn(kind));
      }
    }
    return table.lines();
  }

  private String wrongIn(FindingKind kind) {
    return scores.stream()
        .filter(s -> s.tallies().get(kind).wrong() > 0)
        .map(s -> s.of().label())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** One row a class. */
  public List<String> byClass() {
    Table table =
        new Table("class", "winters", "findings", "untouched %", "accepted %", "within 1 %");
    for (FaultClass of : FaultClass.values()) {
      List<FaultScore> own = scores.stream().filter(s -> s.of() == of).toList();
      if (!own.isEmpty()) {
        table.add(row(of, own));
      }
    }
    return table.lines();
  }

  private static String[] row(FaultClass of, List<FaultScore> own) {
    Median median = new Median();
    double findings = own.stream().mapToInt(s -> s.findings().size()).average().orElse(0);
    return new String[] {
      of.label(),
      "" + own.size(),
      number(findings, 1),
      signed(median.evaluate(own.stream().mapToDouble(FaultScore::untouchedPct).toArray()), 2),
      signed(median.evaluate(own.stream().mapToDouble(FaultScore::acceptedPct).toArray()), 2),
      own.stream().filter(s -> Math.abs(s.acceptedPct()) <= 1).count() + "/" + own.size()
    };
  }

  /** Share of the winters whose total is within one per cent once all is accepted. */
  public double withinOnePct() {
    return scores.stream().filter(s -> Math.abs(s.acceptedPct()) <= 1).count()
        / (double) scores.size();
  }
}
