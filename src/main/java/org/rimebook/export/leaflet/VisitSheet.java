package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.util.List;
import java.util.Optional;
import org.rimebook.export.report.Table;
import org.rimebook.findings.Finding;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Words;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.LastLevels;
import org.rimebook.upkeep.Steps;

/** What to take along to a visit: what to do, to bring, to write down. */
public final class VisitSheet {

  private static final int MOST_FINDINGS = 3;

  private VisitSheet() {}

  /**
   * The sheet.
   *
   * @param result the season
   * @param outlook what to bring, when that was asked for
   */
  public static Leaflet of(SeasonResult result, Optional<OutlookParts> outlook) {
    StationSheet sheet = result.season().sheet();
    LastLevels last = LastLevels.of(result.stage());
    Leaflet.Builder leaflet = new Leaflet.Builder();
    leaflet.heading("Last levels").table(levels(last, sheet));
    outlook.ifPresent(parts -> parts.add(leaflet));
    leaflet.heading("Look at");
    findings(leaflet, result);
    leaflet.heading("Do").steps(Steps.visit());
    leaflet
        .heading("Write down")
        .blanks("Arrived", "Left", "By")
        .blanks("Level before mm", "Level after mm", "Taken out L")
        .blanks("Antifreeze L", "Oil L", "Supply V")
        .blanks("Snow, ice, anything else");
    leaflet.heading("Cautions");
    outlook.ifPresent(parts -> leaflet.cautions(Caution.charge(parts.antifreeze())));
    return leaflet
        .cautions(Caution.lifting(last.meanMm().orElse(0), sheet.gauge()))
        .cautions(Caution.site())
        .done("Visit sheet", sheet.name());
  }

  private static Table levels(LastLevels last, StationSheet sheet) {
    Table.Builder table =
        new Table.Builder().words("Wire").words("Lead").figures("Depth mm").words("At");
    for (int wire = 0; wire < sheet.wires().size(); wire++) {
      table.row(
          sheet.wires().get(wire).name(),
          sheet.wires().get(wire).lead().orElse(Say.NONE),
          Say.number(last.wires().get(wire), 1),
          Say.time(last.atMs(), sheet.utcOffset()));
    }
    table.sum(
        "bucket",
        "",
        Say.number(last.meanMm(), 1),
        sheet.gauge().capacityMm().isPresent()
            ? text("holds %.0f mm", sheet.gauge().capacityMm().getAsDouble())
            : "");
    return table.done();
  }

  private static void findings(Leaflet.Builder leaflet, SeasonResult result) {
    List<Finding> open = result.findings().strongestFirst();
    if (open.isEmpty()) {
      leaflet.words("No finding is open.");
    }
    open.stream()
        .limit(MOST_FINDINGS)
        .forEach(
            finding ->
                leaflet.words(
                    Say.date(finding.span().fromMs(), result.season().sheet().utcOffset())
                        + ": "
                        + finding.reason()));
    if (open.size() > MOST_FINDINGS) {
      leaflet.words(
          Words.counted(open.size() - MOST_FINDINGS, "weaker finding") + " more to be decided.");
    }
  }
}
