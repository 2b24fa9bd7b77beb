package org.rimebook.practice.faults;

import static org.rimebook.practice.bench.Table.number;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.findings.Check;
import org.rimebook.findings.Checks;
import org.rimebook.findings.Finding;
import org.rimebook.practice.bench.Planted;

/** The page about the checks: what each looks for and how, and the tables of a run. */
public final class FaultPage {

  private static final List<String> HEAD =
      List.of(
          "# The checks",
          "",
          "What follows is written by `rimebook practice faults --markdown`. Each check looks at a",
          "season for one kind of fault and proposes the notebook entry that would settle it; none",
          "changes a total. They were tried on half-year winters into which faults were put whose",
          "place is known to the minute, with the notebook empty.",
          "",
          "## What is looked for, and how",
          "");

  private static final List<String> MIDDLE =
      List.of(
          "",
          "## How well they are found",
          "",
          "Over all winters. A finding belongs to a fault when it is of its kind, names one of its",
          "wires and covers at least 0.3 of it, or lies within half an hour of it. Doubtful ones belong",
          "only to what needn't be found: faults too small to matter, what goes with a fault, and what",
          "nobody could tell from one by the record, as ten millimetres that fall in half an hour at",
          "-7 °C, which the storms of these winters know and snow sliding in looks like. They count",
          "neither for nor against precision. Winters were whole; the first two months of a record",
          "tell less of clocks, creeps and what is usual.",
          "",
          "A cap has to be found from 1 mm on, where the depth of snow is measured. Small ones were tried",
          "besides on 109 other winters with snow depth, 49 of them with caps. Of 53 caps of 1 to 3 mm that let",
          "go while hardly anything fell, 50 were found, and 5 showers were taken for caps: nine in ten of",
          "such small findings were right. Humidity has its share in that, and in these winters it tells wet",
          "hours from dry ones better than real air does. Without it 46 were found, beside 11 showers. A",
          "millimetre is about a centimetre of new snow, and these sensors wander by 0.45 cm in half a day:",
          "in frost that is enough, since a shower would bring the snow with the rise, and 16 of 17 caps of 1",
          "to 2 mm were found even so. In a thaw, in which a shower brings no new snow either, 13 of 17 were,",
          "and no limit finds more than half of them with nine in ten findings right.",
          "");

  private FaultPage() {}

  /**
   * The page.
   *
   * @param command the command that makes it again
   * @param report the run
   */
  public static List<String> of(String command, FaultReport report) {
    List<String> lines = new ArrayList<>(HEAD);
    for (Check check : Checks.all()) {
      lines.add(
          "- **" + check.kind().code() + "** (" + check.kind().words() + "). " + check.method());
    }
    lines.addAll(MIDDLE);
    lines.addAll(report.byCheck());
    lines.addAll(
        List.of(
            "",
            "## By class",
            "",
            "Findings on average; error of the season's total with nothing marked and with every",
            "proposal accepted unseen, medians; winters within 1 % then.",
            ""));
    lines.addAll(report.byClass());
    lines.add("");
    for (FaultClass of : FaultClass.values()) {
      lines.add("- **" + of.label() + "**: " + of.words() + ".");
    }
    lines.addAll(
        List.of(
            "",
            "Within 1 %: " + number(100 * report.withinOnePct(), 0) + " % of all winters.",
            "",
            "Made by `" + command + "`."));
    return lines;
  }

  /** Every finding of a winter and what was missed, a line each. */
  public static List<String> findings(FaultScore score) {
    List<String> lines = new ArrayList<>();
    String winter = score.of().label() + " " + score.seed() + " ";
    for (Finding finding : score.findings()) {
      lines.add(
          winter + finding.id() + " " + number(finding.strength(), 2) + " " + finding.reason());
    }
    for (Planted missed : score.missed()) {
      lines.add(
          winter
              + "MISSED "
              + missed.kind().code()
              + "/"
              + missed.span().from()
              + "/"
              + missed.span().to());
    }
    return lines;
  }
}
