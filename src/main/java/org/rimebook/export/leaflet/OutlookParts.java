package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.time.ZoneOffset;
import java.util.OptionalLong;
import org.rimebook.export.report.Table;
import org.rimebook.station.StationSheet;
import org.rimebook.upkeep.Antifreeze;
import org.rimebook.upkeep.BucketNow;
import org.rimebook.upkeep.CatchRates;
import org.rimebook.upkeep.Outlook;
import org.rimebook.upkeep.Plan;

/**
 * The outlook in words and a table.
 *
 * @param outlook what was worked out
 * @param rates by which rates
 * @param antifreeze what keeps the bucket from freezing
 * @param plan what was planned by
 * @param sheet the station sheet
 */
public record OutlookParts(
    Outlook outlook, CatchRates rates, Antifreeze antifreeze, Plan plan, StationSheet sheet) {

  void add(Leaflet.Builder leaflet) {
    leaflet
        .heading("In the bucket")
        .words(contents())
        .words(freezing())
        .heading("When")
        .table(table())
        .words(rate())
        .words(latest());
    why(leaflet, "Overflow", outlook.overflow());
    why(leaflet, "Freezing", outlook.freeze());
    leaflet.heading("What to bring").words(bring());
  }

  /** In short, so that a sheet of one page has room for more. */
  void addShort(Leaflet.Builder leaflet) {
    leaflet.heading("Charge").words(latest()).words("Bring " + bring()).table(table());
    leaflet.fine(contents() + " " + freezing() + " " + rate());
    why(leaflet, "Overflow", outlook.overflow());
    why(leaflet, "Freezing", outlook.freeze());
  }

  private ZoneOffset offset() {
    return sheet.utcOffset();
  }

  private String contents() {
    BucketNow now = outlook.now();
    return text(
        "%s: %.1f mm, of it %.2f L of pure %s and %.2f L of water since %s.",
        Say.time(now.atMs(), offset()),
        now.depthMm(),
        now.antifreezeL(),
        antifreeze.words(),
        now.waterL(),
        Say.date(now.chargedMs(), offset()));
  }

  private String freezing() {
    String source =
        antifreeze.source().map(s -> " (" + s + ")").orElse(" (from memory, not checked)");
    return outlook.freezing().value().isPresent()
        ? text("It freezes at %.1f °C", outlook.freezing().value().getAsDouble()) + source + "."
        : "Where it freezes isn't known: " + outlook.freezing().why() + source + ".";
  }

  private Table table() {
    return new Table.Builder()
        .words("")
        .words("at the median rate")
        .words("at the wet rate")
        .row(
            "full",
            when(outlook.overflow().medianMs(), outlook.overflow()),
            when(outlook.overflow().wetMs(), outlook.overflow()))
        .row(
            text("may freeze at %.0f °C", plan.coldestDegC()),
            when(outlook.freeze().medianMs(), outlook.freeze()),
            when(outlook.freeze().wetMs(), outlook.freeze()))
        .done();
  }

  private String when(OptionalLong ms, Outlook.When when) {
    if (!when.why().isEmpty()) {
      return "not known";
    }
    return ms.isPresent() ? Say.date(ms.getAsLong(), offset()) : "not within ten years";
  }

  private String rate() {
    return rates.runs() == 0
        ? text("Rate given: %.2f mm a day.", rates.wetMmPerDay())
        : text(
            "Rates of this season in runs of %d days: %.2f mm a day in the median, %.2f mm exceeded"
                + " in one of ten (%d runs that overlap).",
            rates.runDays(), rates.medianMmPerDay(), rates.wetMmPerDay(), rates.runs());
  }

  private String latest() {
    return outlook.latestVisitMs().isPresent()
        ? "Latest visit: "
            + Say.date(outlook.latestVisitMs().getAsLong(), offset())
            + text(", the mixture to freeze %.0f °C below the coldest expected.", plan.marginDegC())
        : "No latest date can be told.";
  }

  private static void why(Leaflet.Builder leaflet, String what, Outlook.When when) {
    if (!when.why().isEmpty()) {
      leaflet.words(what + ": " + when.why() + ".");
    }
  }

  private String bring() {
    Outlook.NextCharge next = outlook.next();
    if (next.antifreezeL().isEmpty()) {
      return "Litres aren't told: " + next.why() + ".";
    }
    return text(
            "%.2f L of pure %s, which keep %.0f mm (%d days at the wet rate) from freezing",
            next.antifreezeL().getAsDouble(), antifreeze.words(), next.catchMm(), next.days())
        + (next.why().isEmpty() ? "." : "; " + next.why() + ".");
  }
}
