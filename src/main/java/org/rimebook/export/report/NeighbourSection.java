package org.rimebook.export.report;

import static org.rimebook.station.Words.text;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.rimebook.export.neighbour.ComparisonText;
import org.rimebook.export.neighbour.DoubleMassFigure;
import org.rimebook.export.neighbour.Neighbours;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.neighbour.Comparison;
import org.rimebook.totals.neighbour.MonthRatio;

/** The daily catch beside that of neighbouring stations: ratio, double-mass curve, months. */
public final class NeighbourSection implements ReportSection {

  private static final double MOST_SIDE_PT = 300;

  private final StationSheet sheet;
  private final List<String> names;
  private final Comparison comparison;

  /**
   * The section.
   *
   * @param result the season
   * @param neighbours the tables it is compared with
   */
  public NeighbourSection(SeasonResult result, Neighbours neighbours) {
    this.sheet = result.season().sheet();
    this.names = neighbours.names();
    this.comparison = neighbours.against(result);
  }

  @Override
  public String heading() {
    return "Beside neighbours";
  }

  @Override
  public void write(Flow flow) {
    flow.paragraph("Daily tables of " + String.join(", ", names) + ".");
    if (comparison.pairs().isEmpty()) {
      flow.paragraph("No day is in all tables with the same start and end.");
      return;
    }
    flow.paragraph(
        text(
            "In %d days or runs of days that all have, %.1f mm against %.1f mm%s.",
            comparison.pairs().size(),
            comparison.ownMm(),
            comparison.otherMm(),
            comparison.ratio().isPresent() ? ", ratio " + ratio(comparison.ratio()) : ""));
    String slope =
        String.join(
            "; ",
            new ComparisonText(sheet.name(), names, comparison, sheet.utcOffset()).slopeWords());
    flow.paragraph(slope.substring(0, 1).toUpperCase(Locale.ROOT) + slope.substring(1) + ".");
    flow.table(months());
    flow.figure(
        DoubleMassFigure.of(sheet.name(), comparison, Math.min(MOST_SIDE_PT, flow.width())),
        "A curve from zero to "
            + text("%.1f mm against %.1f mm; ", comparison.ownMm(), comparison.otherMm())
            + slope
            + ".",
        "Double-mass curve: catch of the station against the neighbours', each accumulated.");
  }

  private Table months() {
    Table.Builder table =
        new Table.Builder()
            .words("Month")
            .figures("Days")
            .figures("Own mm")
            .figures("Neighbours mm")
            .figures("Ratio");
    for (MonthRatio month : comparison.months()) {
      table.row(
          month.month().toString(),
          String.valueOf(month.pairs()),
          text("%.1f", month.ownMm()),
          text("%.1f", month.otherMm()),
          ratio(month.ratio()));
    }
    return table.done();
  }

  private static String ratio(OptionalDouble ratio) {
    return ratio.isPresent() ? text("%.3f", ratio.getAsDouble()) : ReportWords.NONE;
  }
}
