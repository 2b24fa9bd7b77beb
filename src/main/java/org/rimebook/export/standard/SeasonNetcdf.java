package org.rimebook.export.standard;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rimebook.season.Season;
import org.rimebook.season.SeasonResult;
import org.rimebook.season.Version;
import org.rimebook.station.StationSheet;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;
import org.rimebook.totals.Totals;
import org.rimebook.undercatch.Phase;

/**
 * The hourly and daily totals as netCDF classic with the CF conventions 1.8. A time is the end of
 * its hour or day, with bounds; the station's place is in scalar coordinates. Reasons and wires,
 * which are words, stay in the tables.
 */
final class SeasonNetcdf {

  /** What netCDF fills numbers with that aren't there (NC_FILL_DOUBLE). */
  static final double FILL = 9.969209968386869e36;

  private static final byte NO_PHASE = -1;
  private static final double MS_PER_S = 1000;
  private static final String SINCE = "seconds since 1970-01-01 00:00:00";
  private static final String EDGES = "edge";

  private final Season season;
  private final Totals totals;
  private final ClassicNetcdf file = new ClassicNetcdf();

  private SeasonNetcdf(SeasonResult result, Totals totals) {
    this.season = result.season();
    this.totals = totals;
  }

  static byte[] bytes(SeasonResult result, Totals totals) {
    return new SeasonNetcdf(result, totals).bytes();
  }

  private byte[] bytes() {
    StationSheet sheet = season.sheet();
    file.global()
        .put("Conventions", Cf.CONVENTIONS)
        .put("title", "Precipitation totals of " + sheet.name())
        .put("source", "vibrating-wire precipitation gauge; totals by rimebook " + Version.number())
        .put("comment", "The catch isn't adjusted for wind; *_adjusted is. Uncertainties: k = 1.")
        .put(
            "utc_offset",
            sheet.utcOffset().getTotalSeconds() == 0 ? "+00:00" : sheet.utcOffset().getId())
        .put("record_sha256", season.digests().record())
        .put("station_sha256", season.digests().station())
        .put("notebook_sha256", season.digests().notebook());
    file.dimension(EDGES, 2);
    file.text("station", sheet.name()).put("long_name", "station name");
    StringBuilder place = new StringBuilder("station");
    scalar("latitude", sheet.latitudeDeg(), "degrees_north", place);
    scalar("longitude", sheet.longitudeDeg(), "degrees_east", place);
    scalar("altitude", sheet.elevationM(), "m", place);
    new Series("hour", "hourly", totals.hourly(), place.toString()).add();
    new Series("day", "daily", totals.daily(), place.toString()).add();
    return file.bytes();
  }

  private void scalar(String name, OptionalDouble value, String units, StringBuilder place) {
    if (value.isPresent()) {
      file.numbers(name, new double[] {value.getAsDouble()})
          .put("standard_name", name)
          .put("units", units);
      place.append(' ').append(name);
    }
  }

  /** The variables of one table. */
  private final class Series {

    private final String axis;
    private final String name;
    private final List<TotalRow> rows;
    private final String place;

    Series(String axis, String name, List<TotalRow> rows, String place) {
      this.axis = axis;
      this.name = name;
      this.rows = rows;
      this.place = place;
    }

    void add() {
      file.dimension(axis, rows.size());
      time();
      amounts();
      quality();
      number("completeness", row -> 100 * row.completeness())
          .put("long_name", "share of the interval covered by usable readings")
          .put("units", "%");
      number("accumulated_since", row -> seconds(row.accumulatedSinceMs()))
          .put(
              "long_name",
              "the catch holds all that fell since then; the rows back to it are missing")
          .put("units", SINCE)
          .put("calendar", "standard")
          .put("_FillValue", FILL);
      byte[] phases = new byte[rows.size()];
      for (int i = 0; i < phases.length; i++) {
        phases[i] = rows.get(i).phase().map(phase -> (byte) phase.ordinal()).orElse(NO_PHASE);
      }
      file.bytes(name + "_phase", phases, axis)
          .put("long_name", "phase of what fell, by air temperature")
          .flags("_FillValue", NO_PHASE)
          .flags("flag_values", flags(Phase.values().length))
          .put("flag_meanings", words(Stream.of(Phase.values()).map(Phase::code)))
          .put("coordinates", place);
    }

    private void time() {
      double[] bounds = new double[2 * rows.size()];
      for (int i = 0; i < rows.size(); i++) {
        bounds[2 * i] = rows.get(i).interval().fromMs() / MS_PER_S;
        bounds[2 * i + 1] = rows.get(i).interval().toMs() / MS_PER_S;
      }
      file.numbers(axis, numbers(row -> row.interval().toMs() / MS_PER_S), axis)
          .put("standard_name", "time")
          .put("long_name", "end of the " + axis)
          .put("units", SINCE)
          .put("calendar", "standard")
          .put("axis", "T")
          .put("bounds", axis + "_bounds");
      file.numbers(axis + "_bounds", bounds, axis, EDGES);
    }

    private void amounts() {
      Resolution resolution = totals.resolution();
      number("catch", row -> mm(row.catchUnits(), resolution))
          .put("standard_name", Cf.CATCH)
          .put("long_name", "catch of the gauge, as depth of water")
          .put("units", "mm")
          .put("_FillValue", FILL)
          .put("cell_methods", axis + ": sum")
          .put("ancillary_variables", ancillary())
          .put("coordinates", place);
      number("uncertainty", row -> row.uncertaintyMm().orElse(FILL))
          .put("standard_name", Cf.CATCH + " standard_error")
          .put("long_name", "standard uncertainty of the catch, k = 1")
          .put("units", "mm")
          .put("_FillValue", FILL)
          .put("coordinates", place);
      number("adjusted", row -> mm(row.adjustedUnits(), resolution))
          .put("long_name", "catch adjusted for wind undercatch, as depth of water")
          .put("units", "mm")
          .put("_FillValue", FILL)
          .put("cell_methods", axis + ": sum")
          .put("coordinates", place);
    }

    private String ancillary() {
      return words(
          Stream.of("uncertainty", "quality", "completeness", "accumulated_since")
              .map(variable -> name + "_" + variable));
    }

    private void quality() {
      byte[] flags = new byte[rows.size()];
      for (int i = 0; i < flags.length; i++) {
        flags[i] = QualityTerm.of(rows.get(i).quality()).flag();
      }
      file.bytes(name + "_quality", flags, axis)
          .put("standard_name", Cf.CATCH + " status_flag")
          .put("long_name", "quality in the words of OGC WaterML 2.0")
          .flags("flag_values", flags(QualityTerm.values().length))
          .put("flag_meanings", words(Stream.of(QualityTerm.values()).map(QualityTerm::word)))
          .put("coordinates", place);
    }

    private ClassicNetcdf.Attributes number(String what, ToDoubleFunction<TotalRow> value) {
      return file.numbers(name + "_" + what, numbers(value), axis);
    }

    private double[] numbers(ToDoubleFunction<TotalRow> value) {
      return rows.stream().mapToDouble(value).toArray();
    }
  }

  private static double mm(OptionalLong units, Resolution resolution) {
    return units.isPresent() ? resolution.toMm(units.getAsLong()).doubleValue() : FILL;
  }

  private static double seconds(OptionalLong epochMs) {
    return epochMs.isPresent() ? epochMs.getAsLong() / MS_PER_S : FILL;
  }

  private static byte[] flags(int count) {
    byte[] flags = new byte[count];
    for (int i = 0; i < count; i++) {
      flags[i] = (byte) i;
    }
    return flags;
  }

  private static String words(Stream<String> words) {
    return words.collect(Collectors.joining(" "));
  }
}
