package org.rimebook.export.leaflet;

import static org.rimebook.station.Words.text;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.rimebook.accumulation.Fitted;
import org.rimebook.accumulation.WireTemperature;
import org.rimebook.depth.AirTemperature;
import org.rimebook.export.report.Table;
import org.rimebook.season.SeasonResult;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Words;

/** What the air temperature does to the wires: as learnt from dry spells, and as stated. */
public final class TemperatureLeaflet {

  private static final double HOUR_MS = 3_600_000;
  private static final double PPM = 1e6;

  private TemperatureLeaflet() {}

  /** The leaflet of a season. */
  public static Leaflet of(SeasonResult result) {
    StationSheet sheet = result.season().sheet();
    Leaflet.Builder leaflet = new Leaflet.Builder();
    leaflet
        .words(used(result))
        .heading("By wire")
        .table(wires(result.wireTemperatures()))
        .words(
            "Fitted to each wire's three-hour changes while nothing fell, beside a daily wave, by"
                + " least squares with Huber's weights. What the sun does to a single wire goes with"
                + " the temperature from day to day and comes in here, so wires may differ by more"
                + " than their uncertainties, which are those of the fit alone. Chamber tests of 256"
                + " wires gave about -40 (Lamb, Persaud and Mouradian 2009).")
        .heading("Dry spells behind it")
        .words(spells(result.drySpells(), sheet));
    return leaflet.done("Temperature coefficients", sheet.name());
  }

  private static String used(SeasonResult result) {
    StationSheet sheet = result.season().sheet();
    Optional<Fitted> learnt =
        result.estimate().learnt().flatMap(l -> l.drift().temperaturePerDegC());
    if (sheet.channel(Channel.AIR_TEMPERATURE).isEmpty()) {
      return "No air temperature is measured: nothing is learnt, and what the sheet states has no"
          + " effect.";
    }
    if (sheet.statesTemperature()) {
      return "The station sheet states a coefficient for every wire: it is taken off each depth,"
          + " and none is learnt.";
    }
    boolean some = sheet.wires().stream().anyMatch(wire -> wire.temperaturePerDegC().isPresent());
    String left = some ? "What the sheet states is taken off each depth first. " : "";
    return left
        + learnt
            .map(
                g ->
                    text(
                        "The level moves by %+.1f ± %.1f millionths of the depth a °C, counted from"
                            + " %.0f °C, and that is taken off it.",
                        PPM * g.value(),
                        PPM * g.standardUncertainty(),
                        AirTemperature.CALIBRATED_DEG_C))
            .orElse("Nothing is learnt of the level: there is too little dry time.");
  }

  private static Table wires(List<WireTemperature> wires) {
    Table.Builder table =
        new Table.Builder()
            .words("Wire")
            .figures("Learnt ppm/°C")
            .figures("Standard uncertainty ppm/°C")
            .figures("Changes behind it")
            .figures("Stated ppm/°C");
    for (WireTemperature wire : wires) {
      table.row(
          wire.wire(),
          wire.perDegC().map(g -> text("%+.1f", PPM * g.value())).orElse(Say.NONE),
          wire.perDegC().map(g -> text("%.1f", PPM * g.standardUncertainty())).orElse(Say.NONE),
          Integer.toString(wire.dryChanges()),
          Double.isNaN(wire.statedPerDegC())
              ? Say.NONE
              : text("%+.1f", PPM * wire.statedPerDegC()));
    }
    return table.done();
  }

  private static String spells(List<Interval> spells, StationSheet sheet) {
    if (spells.isEmpty()) {
      return "None of three hours or more.";
    }
    double hours = spells.stream().mapToLong(Interval::lengthMs).sum() / HOUR_MS;
    Interval longest =
        spells.stream().max(Comparator.comparingLong(Interval::lengthMs)).orElseThrow();
    return text(
        "%s of three hours or more, %.0f h together; the longest from %s to %s.",
        Words.counted(spells.size(), "spell"),
        hours,
        Say.time(longest.fromMs(), sheet.utcOffset()),
        Say.time(longest.toMs(), sheet.utcOffset()));
  }
}
