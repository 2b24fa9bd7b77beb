package org.rimebook.export.leaflet;

import org.rimebook.upkeep.Caution;

/** When the next visit is due, and what to bring. */
public final class NextVisitLeaflet {

  private NextVisitLeaflet() {}

  /** The leaflet. */
  public static Leaflet of(OutlookParts outlook) {
    Leaflet.Builder leaflet = new Leaflet.Builder();
    outlook.add(leaflet);
    return leaflet
        .heading("Cautions")
        .cautions(Caution.charge(outlook.antifreeze()))
        .cautions(Caution.lifting(outlook.outlook().now().depthMm(), outlook.sheet().gauge()))
        .cautions(Caution.site())
        .done("Next visit", outlook.sheet().name());
  }
}
