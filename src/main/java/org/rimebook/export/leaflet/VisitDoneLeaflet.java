package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import org.rimebook.export.report.Table;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.station.StationSheet;

/** A visit as it goes into the notebook, for the file of the station. */
public final class VisitDoneLeaflet {

  private VisitDoneLeaflet() {}

  /**
   * The leaflet.
   *
   * @param visit the visit
   * @param cautions what belongs to what was done
   * @param sheet the station sheet
   */
  public static Leaflet of(Entry.ServiceVisit visit, List<String> cautions, StationSheet sheet) {
    ZoneOffset offset = sheet.utcOffset();
    Leaflet.Builder leaflet =
        new Leaflet.Builder()
            .table(
                new Table.Builder()
                    .words("")
                    .words("As written down")
                    .row("Arrived", Say.time(visit.interval().fromMs(), offset))
                    .row("Left", Say.time(visit.interval().toMs(), offset))
                    .row("Station time", "UTC" + offset)
                    .row("Done", done(visit))
                    .row("Antifreeze L", Say.number(visit.antifreezeL(), 2))
                    .row("Oil L", Say.number(visit.oilL(), 2))
                    .done());
    if (!visit.header().note().isEmpty()) {
      leaflet.heading("Note").words(visit.header().note());
    }
    leaflet.words(
        text(
            "Readings in these %.0f minutes are left out, and no change of level from before to"
                + " after is catch.",
            visit.interval().lengthMs() / 60_000.0));
    leaflet.blanks("By", "Date", "Remarks");
    if (!cautions.isEmpty()) {
      leaflet.heading("Cautions").cautions(cautions);
    }
    return leaflet.done("Visit done", sheet.name());
  }

  private static String done(Entry.ServiceVisit visit) {
    return visit.actions().isEmpty()
        ? Say.NONE
        : visit.actions().stream()
            .map(VisitAction::code)
            .map(code -> code.replace('-', ' '))
            .collect(Collectors.joining(", "));
  }
}
