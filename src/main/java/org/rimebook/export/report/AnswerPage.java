package org.rimebook.export.report;

import static org.rimebook.station.Words.counted;
import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.export.figure.FigureSpec;
import org.rimebook.export.figure.FigureStrip;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.totals.AdjustedTotal;
import org.rimebook.totals.MonthTotal;
import org.rimebook.totals.MonthlyTotals;
import org.rimebook.totals.Quality;
import org.rimebook.totals.TotalRow;

/** The first page: the season's total, its months, how good it is, and its figure. */
final class AnswerPage {

  private static final double PT_PER_MM = 72 / 25.4;
  private static final double LEAST_FIGURE_PT = 190;
  private static final double MOST_FIGURE_PT = 330;
  private static final double FOOT_PT = 78;

  private final ReportData data;
  private final ReportWords words;

  AnswerPage(ReportData data) {
    this.data = data;
    this.words = data.words();
  }

  void write(Flow flow) {
    flow.title("Precipitation at " + data.sheet().name());
    flow.paragraph(
        words.span(data.span())
            + text(
                ", station time (%s). The climatological day starts at %s.",
                words.zone(), data.sheet().dayStartsAt()));
    flow.set(Style.ANSWER, answer());
    flow.paragraph(adjusted());
    flow.paragraph(SignOffLine.of(data));
    flow.table(months());
    flow.small(
        "Uncertainties of months don't add up to the season's: months share the levels at their"
            + " ends.");
    flow.table(qualities());
    figure(flow);
  }

  private String answer() {
    return data.totals().seasonUnits().isPresent()
        ? words.mm(data.totals().seasonUnits()) + " mm  ± " + rounded(uncertaintyMm()) + " mm"
        : "No hour has a total";
  }

  /** To a tenth, and finer where that would read as none. */
  private String rounded(OptionalDouble uncertaintyMm) {
    String tenths = words.mm(uncertaintyMm, 1);
    return tenths.equals("0.0") ? words.mm(uncertaintyMm, 2) : tenths;
  }

  private OptionalDouble uncertaintyMm() {
    return data.totals().seasonUnits().isPresent()
        ? OptionalDouble.of(
            Math.sqrt(data.result().series().varianceMm2(data.span().fromMs(), data.span().toMs())))
        : OptionalDouble.empty();
  }

  private String adjusted() {
    Optional<AdjustedTotal> adjusted = data.totals().adjusted();
    String measured = "Caught by the bucket; standard uncertainty (k = 1).";
    if (adjusted.isEmpty()) {
      return measured + " No hour could be adjusted for wind undercatch.";
    }
    double uncertainty =
        adjusted.get().uncertaintyMm(data.totals().resolution(), data.result().series());
    return measured
        + " Adjusted for wind undercatch, the hours in which wind and air temperature are known"
        + text(
            " come to %s mm ± %s mm; the bucket caught %s mm in the same hours.",
            data.totals().resolution().toMm(adjusted.get().units()),
            ReportWords.number(uncertainty, 1),
            data.totals().resolution().toMm(adjusted.get().catchUnits()));
  }

  private Table months() {
    Table.Builder table =
        new Table.Builder()
            .words("Month")
            .figures("Catch mm")
            .figures("Uncertainty mm")
            .figures("Complete %")
            .words("Quality")
            .words("Days not in it");
    for (MonthTotal month : MonthlyTotals.of(data.totals(), data.sheet(), data.result().series())) {
      TotalRow row = month.row();
      table.row(
          words.month(row.interval().fromMs()),
          words.mm(row.catchUnits()),
          words.mm(row.uncertaintyMm(), 2),
          ReportWords.number(100 * row.completeness(), 1),
          row.quality().code(),
          lacking(month));
    }
    double complete =
        data.totals().hourly().stream().mapToDouble(TotalRow::completeness).average().orElse(0);
    return table
        .sum(
            "Season",
            words.mm(data.totals().seasonUnits()),
            words.mm(uncertaintyMm(), 2),
            ReportWords.number(100 * complete, 1),
            "",
            "")
        .done();
  }

  private static String lacking(MonthTotal month) {
    List<String> lacking = new ArrayList<>();
    if (month.daysOutside() > 0) {
      lacking.add(month.daysOutside() + " outside the record");
    }
    if (month.daysMissing() > 0) {
      lacking.add(month.daysMissing() + " missing");
    }
    if (month.daysElsewhere() > 0) {
      lacking.add(month.daysElsewhere() + " in a total of the next month");
    }
    return String.join(", ", lacking);
  }

  private Table qualities() {
    Table.Builder table = new Table.Builder().words("Quality").figures("Hours").figures("Days");
    table.words("Meaning");
    for (Quality quality : Quality.values()) {
      table.row(
          quality.code(),
          Long.toString(count(data.totals().hourly(), quality)),
          Long.toString(count(data.totals().daily(), quality)),
          meaning(quality));
    }
    return table.done();
  }

  private static long count(List<TotalRow> rows, Quality quality) {
    return rows.stream().filter(row -> row.quality() == quality).count();
  }

  private static String meaning(Quality quality) {
    return switch (quality) {
      case GOOD -> "by two wires or more";
      case UNCHECKED -> "by one wire, with nothing to check it against";
      case ESTIMATE -> "the analyst's own total, or no change of level over a gap";
      case SUSPECT -> "wires disagree, or a finding nobody has decided on";
      case POOR -> "part of the time isn't known; what is known is given";
      case MISSING -> "no total of its own; it may be in a later one";
    };
  }

  private void figure(Flow flow) {
    double room = flow.room() - FOOT_PT;
    double heightPt = room < LEAST_FIGURE_PT ? MOST_FIGURE_PT : Math.min(MOST_FIGURE_PT, room);
    FigureSpec spec =
        new FigureSpec(
            data.span(),
            List.of(FigureStrip.CATCH, FigureStrip.DAILY),
            flow.width() / PT_PER_MM,
            heightPt / PT_PER_MM);
    long days = data.totals().daily().stream().filter(d -> d.catchUnits().orElse(0) > 0).count();
    flow.figure(
        SeasonFigure.of(data.result(), data.totals(), spec),
        "Two charts over time. Above, the catch adds up from 0 to "
            + words.mm(data.totals().seasonUnits())
            + " mm. Below, daily totals: "
            + counted(days, "day")
            + " with catch.",
        "Accumulated catch and daily totals. Grey: the catch is known but not when it fell, or it"
            + " isn't known.");
    flow.blanks(List.of("Reviewed by", "Date", "Signature"));
  }
}
