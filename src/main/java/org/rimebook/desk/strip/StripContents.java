package org.rimebook.desk.strip;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rimebook.desk.model.CatchForm;
import org.rimebook.desk.model.Computed;
import org.rimebook.desk.model.Neighbour;
import org.rimebook.desk.model.StripSetting.Kind;
import org.rimebook.desk.series.CatchBars;
import org.rimebook.desk.series.SeasonSeries;
import org.rimebook.desk.series.TraceSeries;
import org.rimebook.station.RecordLayout.FrequencyKind;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.TotalRow;

/** Makes the strips there are for a season. */
final class StripContents {

  private StripContents() {}

  /** A strip for each kind of line that the season has. */
  static Map<Kind, StripPlot> lines(SeasonSeries series, StationSheet sheet) {
    boolean counts = sheet.layout().frequencyKind() == FrequencyKind.COUNTS;
    Map<Kind, StripPlot> strips = new EnumMap<>(Kind.class);
    for (Map.Entry<Kind, List<TraceSeries>> lines : series.lines().entrySet()) {
      Kind kind = lines.getKey();
      String unit = unit(kind, counts);
      strips.put(
          kind,
          new StripPlot(
              kind.words() + ", " + unit, new TraceContent(lines.getValue(), scale(kind, unit))));
    }
    return strips;
  }

  /** The strip of the catch, in the form asked for. */
  static StripPlot caught(StripFeed.Caught caught, Computed computed, CatchForm form) {
    if (form == CatchForm.ACCUMULATED) {
      return new StripPlot(
          "Catch since the start, mm", new CurveContent(caught.pyramid(), caught.curve()));
    }
    boolean daily = form == CatchForm.DAILY;
    List<TotalRow> rows = daily ? computed.totals().daily() : computed.totals().hourly();
    return new StripPlot(
        daily ? "Catch a day, mm" : "Catch an hour, mm",
        new BarContent(
            new CatchBars(rows, computed.totals().resolution()),
            computed.totals().resolution().decimals()));
  }

  /** The strip of a neighbour's daily catch. */
  static StripPlot of(Neighbour neighbour) {
    return new StripPlot(
        "Catch a day by " + neighbour.name() + ", mm",
        new BarContent(
            new CatchBars(neighbour.days(), Neighbour.RESOLUTION),
            Neighbour.RESOLUTION.decimals()));
  }

  /** Whether a season may have a strip of a kind. */
  static boolean has(Optional<SeasonSeries> series, Kind kind) {
    return kind == Kind.CATCH || series.filter(s -> s.lines().containsKey(kind)).isPresent();
  }

  private static TraceContent.Scale scale(Kind kind, String unit) {
    return switch (kind) {
      case FREQUENCY -> new TraceContent.Scale(unit, 2, 0.5, true);
      case DEPTH, CATCH, NEIGHBOUR -> new TraceContent.Scale(unit, 2, 1, false);
      case TEMPERATURE, WIND -> new TraceContent.Scale(unit, 1, 2, true);
      case HUMIDITY -> new TraceContent.Scale(unit, 0, 10, true);
      case SUPPLY -> new TraceContent.Scale(unit, 2, 0.5, true);
    };
  }

  private static String unit(Kind kind, boolean counts) {
    return switch (kind) {
      case FREQUENCY -> counts ? "counts" : "Hz";
      case DEPTH, CATCH, NEIGHBOUR -> "mm";
      case TEMPERATURE -> "\u00b0C";
      case WIND -> "m/s";
      case HUMIDITY -> "%";
      case SUPPLY -> "V";
    };
  }
}
