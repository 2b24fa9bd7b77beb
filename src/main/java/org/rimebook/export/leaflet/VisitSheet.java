package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    leaflet.words(levels(last, sheet));
    outlook.ifPresent(parts -> parts.addShort(leaflet));
    leaflet.heading("Look at");
    findings(leaflet, result);
    leaflet.heading("Do").steps(Steps.visit());
    leaflet
        .heading("Write down")
        .blanks("Arrived", "Left", "By", "Supply V")
        .blanks("Level before mm", "Level after mm", "Taken out L", "Antifreeze L", "Oil L")
        .blanks("Snow, ice, anything else");
    List<String> cautions = new ArrayList<>();
    outlook.ifPresent(parts -> cautions.addAll(Caution.charge(parts.antifreeze())));
    cautions.addAll(Caution.lifting(last.meanMm().orElse(0), sheet.gauge()));
    cautions.addAll(Caution.site());
    return leaflet.heading("Cautions").cautions(cautions).done("Visit sheet", sheet.name());
  }

  private static String levels(LastLevels last, StationSheet sheet) {
    List<String> wires = new ArrayList<>();
    for (int wire = 0; wire < sheet.wires().size(); wire++) {
      String lead = sheet.wires().get(wire).lead().map(l -> " (" + l + " lead)").orElse("");
      wires.add(
          sheet.wires().get(wire).name()
              + lead
              + " "
              + Say.number(last.wires().get(wire), 1)
              + " mm");
    }
    String holds =
        sheet.gauge().capacityMm().isPresent()
            ? text(" of %.0f mm", sheet.gauge().capacityMm().getAsDouble())
            : " mm";
    return text(
        "Last levels, %s: bucket %s%s; %s.",
        Say.time(last.atMs(), sheet.utcOffset()),
        Say.number(last.meanMm(), 1),
        holds,
        String.join(", ", wires));
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
                leaflet.fine(
                    Say.date(finding.span().fromMs(), result.season().sheet().utcOffset())
                        + ": "
                        + finding.reason()));
    if (open.size() > MOST_FINDINGS) {
      leaflet.fine(
          Words.counted(open.size() - MOST_FINDINGS, "weaker finding") + " more to be decided.");
    }
  }
}
