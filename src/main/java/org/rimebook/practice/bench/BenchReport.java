package org.rimebook.practice.bench;

import static org.rimebook.practice.bench.Table.number;
import static org.rimebook.practice.bench.Table.signed;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Tables of one variant: the estimator by class, then every method by class. Run times are left out
 * where the table is to come out the same on every machine.
 *
 * @param variant the variant
 * @param classes its classes; at least one
 * @param timed whether run times are shown
 */
public record BenchReport(Variant variant, List<ClassSummary> classes, boolean timed) {

  public BenchReport {
    classes = List.copyOf(classes);
  }

  /**
   * Puts scores together by class.
   *
   * @param variant the variant
   * @param scores scores of winters of that variant, at least one
   * @param timed whether run times are shown
   */
  public static BenchReport of(Variant variant, List<WinterScore> scores, boolean timed) {
    List<ClassSummary> classes = new ArrayList<>();
    for (Scenario scenario : Scenario.values()) {
      List<WinterScore> own =
          scores.stream().filter(s -> s.winter().scenario() == scenario).toList();
      if (!own.isEmpty()) {
        classes.add(new ClassSummary(scenario, own));
      }
    }
    return new BenchReport(variant, classes, timed);
  }

  /** The estimator's errors by class. */
  public List<String> errors() {
    Table table =
        new Table(
            timedHead(
                "class",
                "hour mm",
                "÷ filter",
                "÷ oracle",
                "day mm",
                "÷ filter",
                "÷ oracle",
                "bias %",
                "± bias %",
                "false mm",
                "missed mm",
                "unknown %"));
    for (ClassSummary of : classes) {
      table.add(
          timed(
              of.median(s -> s.estimator().seconds()),
              of.scenario().label(),
              number(of.estimator(Score::hourlyRmseMm), 4),
              number(of.toFilter(Score::hourlyRmseMm), 2),
              number(of.toOracle(Score::hourlyRmseMm), 2),
              number(of.estimator(Score::dailyRmseMm), 4),
              number(of.toFilter(Score::dailyRmseMm), 2),
              number(of.toOracle(Score::dailyRmseMm), 2),
              signed(of.estimator(Score::seasonBiasPct), 2),
              number(of.estimator(s -> Math.abs(s.seasonBiasPct())), 2),
              number(of.estimator(Score::falseCatchMm), 2),
              number(of.estimator(Score::missedCatchMm), 2),
              number(of.median(WinterScore::unknownPct), 2)));
    }
    return table.lines();
  }

  /** How often the truth lies within the uncertainty the estimator states, by class. */
  public List<String> honesty() {
    Table table =
        new Table(
            "class", "hours 1u %", "2u %", "days 1u %", "2u %", "seasons 1u", "2u", "error in u");
    Coverage seasons = Coverage.NONE;
    for (ClassSummary of : classes) {
      table.add(
          of.scenario().label(),
          number(of.hours().within1uPct(), 1),
          number(of.hours().within2uPct(), 1),
          number(of.days().within1uPct(), 1),
          number(of.days().within2uPct(), 1),
          of.seasons().within1u() + "/" + of.seasons().wet(),
          of.seasons().within2u() + "/" + of.seasons().wet(),
          number(of.median(s -> s.honesty().seasonErrorInU()), 2));
      seasons = seasons.plus(of.seasons());
    }
    List<String> lines = new ArrayList<>(table.lines());
    lines.add("");
    lines.add(
        "Of all season totals "
            + number(seasons.within1uPct(), 0)
            + " % lie within 1 u and "
            + number(seasons.within2uPct(), 0)
            + " % within 2 u.");
    return lines;
  }

  /** Every method by class. */
  public List<String> methods() {
    Table table =
        new Table(
            timedHead("class", "method", "hour mm", "day mm", "bias %", "false mm", "missed mm"));
    for (ClassSummary of : classes) {
      addMethod(table, of, WinterScore::estimator);
      addMethod(table, of, WinterScore::oracle);
      for (int i = 0; i < of.scores().get(0).published().size(); i++) {
        int method = i;
        addMethod(table, of, s -> s.published().get(method));
      }
    }
    return table.lines();
  }

  private void addMethod(Table table, ClassSummary of, Function<WinterScore, MethodScore> method) {
    Function<WinterScore, Score> score = method.andThen(MethodScore::score);
    table.add(
        timed(
            of.median(s -> method.apply(s).seconds()),
            of.scenario().label(),
            method.apply(of.scores().get(0)).method(),
            number(of.median(s -> score.apply(s).hourlyRmseMm()), 4),
            number(of.median(s -> score.apply(s).dailyRmseMm()), 4),
            signed(of.median(s -> score.apply(s).seasonBiasPct()), 2),
            number(of.median(s -> score.apply(s).falseCatchMm()), 2),
            number(of.median(s -> score.apply(s).missedCatchMm()), 2)));
  }

  private String[] timedHead(String... cells) {
    return timed ? with(cells, "time s") : cells;
  }

  private String[] timed(double seconds, String... cells) {
    return timed ? with(cells, number(seconds, 2)) : cells;
  }

  private static String[] with(String[] cells, String last) {
    String[] all = new String[cells.length + 1];
    System.arraycopy(cells, 0, all, 0, cells.length);
    all[cells.length] = last;
    return all;
  }
}
