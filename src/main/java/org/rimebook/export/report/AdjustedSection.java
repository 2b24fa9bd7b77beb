package org.rimebook.export.report;

import static org.rimebook.station.Words.text;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.export.figure.FigureSpec;
import org.rimebook.export.figure.FigureStrip;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.totals.AdjustedTotal;
import org.rimebook.totals.TotalRow;
import org.rimebook.undercatch.Phase;
import org.rimebook.undercatch.Undercatch;

/** The adjusted catch beside the measured, hour by hour the same hours. */
final class AdjustedSection implements ReportSection {

  private static final double PT_PER_MM = 72 / 25.4;
  private static final double FIGURE_PT = 170;

  private final ReportData data;

  AdjustedSection(ReportData data) {
    this.data = data;
  }

  @Override
  public String heading() {
    return "Adjusted beside measured";
  }

  @Override
  public void write(Flow flow) {
    Optional<AdjustedTotal> adjusted = data.totals().adjusted();
    if (adjusted.isEmpty()) {
      flow.paragraph(
          "No hour could be adjusted for wind undercatch. "
              + Undercatch.obstacle(data.sheet()).orElse("The station sheet names no wind speed."));
      return;
    }
    flow.paragraph(
        "An hour is adjusted when wind and air temperature are known and so is the half hour it"
            + " fell in. Both columns hold these hours only. The adjusted catch is beside the"
            + " measured and never instead of it.");
    flow.table(byMonth(adjusted.get()));
    flow.table(byPhase());
    FigureSpec spec =
        new FigureSpec(
            data.span(),
            List.of(FigureStrip.ADJUSTED),
            flow.width() / PT_PER_MM,
            FIGURE_PT / PT_PER_MM);
    flow.figure(
        SeasonFigure.of(data.result(), data.totals(), spec),
        "Two lines over time: catch adds up to "
            + data.totals().resolution().toMm(adjusted.get().catchUnits())
            + " mm, adjusted catch to "
            + data.totals().resolution().toMm(adjusted.get().units())
            + " mm.",
        "Catch (solid) and adjusted catch (dashed) of the hours that could be adjusted.");
  }

  /** Hours, catch and adjusted catch of a group. */
  private static final class Sum {
    private int hours;
    private long catchUnits;
    private long units;

    private void add(TotalRow hour) {
      hours++;
      catchUnits += hour.catchUnits().orElseThrow();
      units += hour.adjustedUnits().orElseThrow();
    }
  }

  private List<TotalRow> hours() {
    return data.totals().hourly().stream().filter(h -> h.adjustedUnits().isPresent()).toList();
  }

  private Table byMonth(AdjustedTotal season) {
    Map<String, Sum> months = new LinkedHashMap<>();
    for (TotalRow hour : hours()) {
      months.computeIfAbsent(month(hour), m -> new Sum()).add(hour);
    }
    Table.Builder table = columns("Month");
    months.forEach((month, sum) -> table.row(cells(month, sum)));
    Sum all = new Sum();
    all.hours = hours().size();
    all.catchUnits = season.catchUnits();
    all.units = season.units();
    return table.sum(cells("Season", all)).done();
  }

  /** The month of an hour's climatological day, as on the first page. */
  private String month(TotalRow hour) {
    long dayStartMs = data.sheet().dayStartsAt().toNanoOfDay() / 1_000_000;
    return data.words().month(hour.interval().fromMs() - dayStartMs);
  }

  private Table byPhase() {
    Map<Phase, Sum> phases = new LinkedHashMap<>();
    for (Phase phase : Phase.values()) {
      phases.put(phase, new Sum());
    }
    for (TotalRow hour : hours()) {
      hour.phase().ifPresent(phase -> phases.get(phase).add(hour));
    }
    Table.Builder table = columns("Phase");
    phases.forEach((phase, sum) -> table.row(cells(phase.code(), sum)));
    return table.done();
  }

  private static Table.Builder columns(String first) {
    return new Table.Builder()
        .words(first)
        .figures("Hours")
        .figures("Catch mm")
        .figures("Adjusted mm")
        .figures("Adjusted/catch");
  }

  private String[] cells(String name, Sum sum) {
    return new String[] {
      name,
      Integer.toString(sum.hours),
      data.totals().resolution().toMm(sum.catchUnits).toPlainString(),
      data.totals().resolution().toMm(sum.units).toPlainString(),
      sum.catchUnits > 0 ? text("%.2f", sum.units / (double) sum.catchUnits) : ReportWords.NONE
    };
  }
}
