package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.time.ZoneOffset;
import java.util.List;
import org.rimebook.export.report.Table;
import org.rimebook.station.StationSheet;
import org.rimebook.upkeep.Caution;
import org.rimebook.upkeep.ChargeCheck;
import org.rimebook.upkeep.Poured;

/** What was poured in against what the wires show. */
public final class ChargeLeaflet {

  private ChargeLeaflet() {}

  /**
   * The leaflet.
   *
   * @param checks the visits
   * @param like what is poured at this gauge
   * @param sheet the station sheet
   */
  public static Leaflet of(List<ChargeCheck> checks, Poured like, StationSheet sheet) {
    Leaflet.Builder leaflet = new Leaflet.Builder();
    double areaCm2 = sheet.gauge().orificeAreaCm2();
    leaflet.words(
        text(
            "A litre of water stands %.1f mm high over %.0f cm². Of %s, %.0f %% by volume, a litre"
                + " weighs %.3f kg; of the oil, %.3f kg.",
            10_000 / areaCm2,
            areaCm2,
            like.antifreeze().words(),
            100 * like.strength(),
            like.antifreeze().kgPerL(like.strength()),
            like.oilKgPerL()));
    if (checks.isEmpty()) {
      leaflet.words("No visit of the notebook says how many litres were poured in.");
    } else {
      leaflet.table(table(checks, sheet.utcOffset()));
      leaflet.words(
          "2 mm and 3 % of what is expected are let pass: jug, scales, and wires, which together are"
              + " good for 1 % (Duchon, Wade and Cole 2003; the rest is own choice). One wire that"
              + " is off alone asks for its calibration; all alike for litres or orifice.");
    }
    return leaflet
        .heading("Cautions")
        .cautions(Caution.charge(like.antifreeze()))
        .done("Charge", sheet.name());
  }

  private static Table table(List<ChargeCheck> checks, ZoneOffset offset) {
    Table.Builder table =
        new Table.Builder()
            .words("Visit")
            .figures("Antifreeze L")
            .figures("Oil L")
            .figures("Expected mm")
            .words("Wire")
            .figures("Before mm")
            .figures("After mm")
            .figures("Off by mm")
            .words("");
    for (ChargeCheck check : checks) {
      for (ChargeCheck.WireRise wire : check.wires()) {
        table.row(
            Say.time(check.visit().interval().fromMs(), offset),
            Say.number(check.visit().antifreezeL(), 2),
            Say.number(check.visit().oilL(), 2),
            Say.number(check.expectedMm(), 1) + (check.emptied() ? " from empty" : ""),
            wire.wire(),
            Say.number(wire.beforeMm(), 1),
            Say.number(wire.afterMm(), 1),
            Say.signed(check.offMm(wire), 1),
            check.offMm(wire).isEmpty() ? "not read" : check.suits(wire) ? "suits" : "look again");
      }
    }
    return table.done();
  }
}
