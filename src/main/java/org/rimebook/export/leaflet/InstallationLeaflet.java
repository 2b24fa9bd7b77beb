package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.util.Set;
import org.rimebook.export.report.Table;
import org.rimebook.station.StationSheet;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.InstallationCheck;
import org.rimebook.upkeep.Steps;

/** A gauge just set up, and what a few minutes of readings say of it. */
public final class InstallationLeaflet {

  private InstallationLeaflet() {}

  /** The leaflet, with all steps still to be ticked. */
  public static Leaflet of(InstallationCheck check, StationSheet sheet) {
    return of(check, sheet, Set.of());
  }

  /**
   * The leaflet.
   *
   * @param check what the readings tell
   * @param sheet the station sheet
   * @param done places of the steps that are done, counted from 0, in {@link Steps#installation()}
   */
  public static Leaflet of(InstallationCheck check, StationSheet sheet, Set<Integer> done) {
    Leaflet.Builder leaflet = new Leaflet.Builder();
    leaflet
        .words(
            text(
                "At rest from %s to %s%s: %s.",
                Say.time(check.at().fromMs(), sheet.utcOffset()),
                Say.time(check.at().toMs(), sheet.utcOffset()),
                check.windMs().isPresent()
                    ? text(", wind %.1f m/s", check.windMs().getAsDouble())
                    : ", wind not measured",
                check.summary()))
        .heading("What the readings tell")
        .table(points(check))
        .heading("Steps")
        .steps(Steps.installation(), done)
        .blanks("By", "Date", "Remarks")
        .heading("Cautions")
        .cautions(Caution.site());
    return leaflet.done("Installation check", sheet.name());
  }

  private static Table points(InstallationCheck check) {
    Table.Builder table = new Table.Builder().words("Looked at").words("").words("Readings");
    check.points().forEach(p -> table.row(p.what(), p.outcome().words(), p.words()));
    return table.done();
  }
}
