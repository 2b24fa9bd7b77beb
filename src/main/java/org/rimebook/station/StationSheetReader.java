package org.rimebook.station;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a station sheet ({@code station.json}), naming everything wrong with it at once. */
public final class StationSheetReader {

  private final List<Problem> problems = new ArrayList<>();
  private final List<String> unknown = new ArrayList<>();

  private StationSheetReader() {}

  /**
   * A sheet as read.
   *
   * @param sheet the sheet
   * @param unknownMembers paths of members this version doesn't know; they are kept on rewrite
   */
  public record Reading(StationSheet sheet, List<String> unknownMembers) {}

  /**
   * Reads a sheet.
   *
   * @param text the JSON text
   * @param file name used in problems
   * @throws InputException naming every absent or wrong member by line and column
   */
  public static Reading read(String text, String file) throws InputException {
    StationSheetReader reader = new StationSheetReader();
    Json json = Json.parse(text, file, 1);
    StationSheet sheet = reader.sheet(Members.of(file, "", json, reader.problems));
    if (!reader.problems.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return new Reading(sheet, reader.unknown.stream().distinct().toList());
  }

  private StationSheet sheet(Members root) {
    String format = root.requiredText("format", StationSheet.FORMAT);
    if (!format.isEmpty() && !format.equals(StationSheet.FORMAT)) {
      root.problem("format", "is \"" + format + "\"", "This version reads " + StationSheet.FORMAT);
    }
    StationSheet sheet =
        new StationSheet(
            root.requiredText("name", "Example Ridge"),
            bounded(root, "latitude_deg", -90, 90),
            bounded(root, "longitude_deg", -180, 360),
            root.number("elevation_m"),
            offset(root),
            dayStart(root),
            gauge(root.object("gauge")),
            wires(root),
            layout(root.object("record")),
            channels(root));
    unknown.addAll(root.untaken());
    return sheet;
  }

  private static OptionalDouble bounded(Members at, String name, double least, double most) {
    OptionalDouble value = at.number(name);
    if (value.isPresent() && (value.getAsDouble() < least || value.getAsDouble() > most)) {
      at.problem(name, "is " + value.getAsDouble(), "It lies between " + least + " and " + most);
    }
    return value;
  }

  private static ZoneOffset offset(Members root) {
    String text = root.requiredText("utc_offset", "-07:00");
    try {
      return text.isEmpty() ? ZoneOffset.UTC : ZoneOffset.of(text);
    } catch (DateTimeException e) {
      root.problem(
          "utc_offset",
          "is \"" + text + "\"",
          "Write hours and minutes east of UTC, for example \"-07:00\"; summer time isn't used");
      return ZoneOffset.UTC;
    }
  }

  private static LocalTime dayStart(Members root) {
    String text = root.text("day_starts_at").orElse("00:00");
    try {
      LocalTime time = LocalTime.parse(text);
      if (time.getMinute() == 0 && time.getSecond() == 0 && time.getNano() == 0) {
        return time;
      }
      root.problem("day_starts_at", "is \"" + text + "\"", "A day starts at a full hour");
    } catch (DateTimeException e) {
      root.problem(
          "day_starts_at", "is \"" + text + "\"", "Write station time, for example \"06:00\"");
    }
    return LocalTime.MIDNIGHT;
  }

  private Gauge gauge(Members at) {
    double area = at.requiredNumber("orifice_area_cm2", "200");
    if (area <= 0) {
      at.problem("orifice_area_cm2", "is " + area, "It is positive, in cm²");
    }
    String shieldText = at.text("wind_shield").orElse(WindShield.OTHER.code());
    Optional<WindShield> shield =
        Stream.of(WindShield.values()).filter(s -> s.code().equals(shieldText)).findFirst();
    if (shield.isEmpty()) {
      at.problem("wind_shield", "is \"" + shieldText + "\"", "Use " + codes());
    }
    Gauge gauge =
        new Gauge(
            area,
            positive(at, "capacity_mm"),
            positive(at, "rim_height_m"),
            shield.orElse(WindShield.OTHER));
    unknown.addAll(at.untaken());
    return gauge;
  }

  private static String codes() {
    return Stream.of(WindShield.values()).map(WindShield::code).collect(Collectors.joining(", "));
  }

  private static OptionalDouble positive(Members at, String name) {
    OptionalDouble value = at.number(name);
    if (value.isPresent() && value.getAsDouble() <= 0) {
      at.problem(name, "is " + value.getAsDouble(), "It is positive");
    }
    return value;
  }

  private List<Wire> wires(Members root) {
    List<Wire> wires = new ArrayList<>();
    Set<String> names = new HashSet<>();
    Set<String> columns = new HashSet<>();
    for (Members at : root.objects("wires")) {
      String name = at.requiredText("name", "north");
      if (!name.isEmpty() && !names.add(name)) {
        at.problem("name", "\"" + name + "\" is used twice", "Give each wire a name of its own");
      }
      if (name.contains("+") || name.contains(";") || name.contains(",")) {
        at.problem("name", "is \"" + name + "\"", "Leave out '+', ';' and ','");
      }
      String column = at.requiredText("frequency_column", "f1_hz");
      if (!column.isEmpty() && !columns.add(column)) {
        at.problem(
            "frequency_column",
            "\"" + column + "\" is another wire's too",
            "Give each wire the column of its own readings");
      }
      wires.add(new Wire(name, column, at.text("lead"), calibrations(at), temperaturePerDegC(at)));
      unknown.addAll(at.untaken());
    }
    if (wires.isEmpty()) {
      root.problem("wires", "holds no wire", "Enter at least one, with its calibration");
    }
    return wires;
  }

  private static OptionalDouble temperaturePerDegC(Members wire) {
    return bounded(wire, "temperature_per_degc", -Wire.MOST_PER_DEG_C, Wire.MOST_PER_DEG_C);
  }

  private List<Calibration> calibrations(Members wire) {
    List<Calibration> calibrations = new ArrayList<>();
    Optional<Instant> last = Optional.empty();
    for (Members at : wire.objects("calibrations")) {
      Optional<Instant> from = at.instant("from");
      boolean laterThanLast =
          from.isPresent() && (last.isEmpty() || from.get().isAfter(last.get()));
      boolean unreadable = from.isEmpty() && at.has("from");
      if (!calibrations.isEmpty() && !laterThanLast && !unreadable) {
        at.problem("from", "isn't later than the calibration before it", "Order them by from");
      }
      last = from;
      calibrations.add(
          new Calibration(
              from,
              at.requiredNumber("a_cm_per_hz", "0.0172"),
              at.requiredNumber("b_cm_per_hz2", "8.2e-6"),
              at.requiredNumber("f0_hz", "1050.1")));
      unknown.addAll(at.untaken());
    }
    if (calibrations.isEmpty()) {
      wire.problem(
          "calibrations", "holds no calibration", "Enter A, B and f0 from the wire's sheet");
      calibrations.add(new Calibration(Optional.empty(), 0, 0, 0));
    }
    return calibrations;
  }

  private RecordLayout layout(Members at) {
    List<String> files = at.texts("files");
    Optional<String> timeIs = at.text("time_is");
    Optional<String> kind = at.text("frequency_kind");
    OptionalDouble gateS = positive(at, "gate_s");
    oneOf(at, "time_is", timeIs, List.of("start", "end"));
    oneOf(at, "frequency_kind", kind, List.of("hertz", "counts"));
    oneOf(at, "decimal", at.text("decimal"), List.of(".", ","));
    Optional<Character> delimiter = character(at, "delimiter");
    Optional<Character> decimal = character(at, "decimal");
    if (delimiter.isPresent() && delimiter.equals(decimal)) {
      at.problem("decimal", "is the delimiter too", "Leave out the one the files settle");
    }
    boolean counts = kind.equals(Optional.of("counts"));
    if (counts && gateS.isEmpty()) {
      at.problem(
          "gate_s", "is absent or null while frequency_kind is counts", "Enter the gate time [s]");
    }
    RecordLayout layout =
        new RecordLayout(
            files.isEmpty() ? List.of("records/*.csv", "records/*.csv.gz") : files,
            at.requiredText("time_column", "time"),
            at.texts("missing"),
            delimiter,
            decimal,
            at.text("time_format"),
            timeIs.equals(Optional.of("start"))
                ? RecordLayout.TimeIs.START
                : RecordLayout.TimeIs.END,
            counts ? RecordLayout.FrequencyKind.COUNTS : RecordLayout.FrequencyKind.HERTZ,
            gateS);
    unknown.addAll(at.untaken());
    return layout;
  }

  private static void oneOf(Members at, String name, Optional<String> value, List<String> allowed) {
    if (value.isPresent() && !allowed.contains(value.get())) {
      at.problem(name, "is \"" + value.get() + "\"", "Use " + String.join(" or ", allowed));
    }
  }

  private static Optional<Character> character(Members at, String name) {
    Optional<String> text = at.text(name);
    if (text.isPresent() && text.get().equals("\\t")) {
      return Optional.of('\t');
    }
    if (text.isPresent() && text.get().length() != 1) {
      at.problem(name, "is \"" + text.get() + "\"", "It is one character");
      return Optional.empty();
    }
    return text.map(t -> t.charAt(0));
  }

  private List<Channel> channels(Members root) {
    List<Channel> channels = new ArrayList<>();
    Set<List<String>> columns = new HashSet<>();
    for (Members at : root.objects("channels")) {
      String quantity = at.requiredText("quantity", Channel.AIR_TEMPERATURE);
      String column = at.requiredText("column", "air_temp_c");
      if (!column.isEmpty() && !columns.add(List.of(quantity, column))) {
        at.problem(
            "column",
            "\"" + column + "\" is given for " + quantity + " twice",
            "Leave one of the two out");
      }
      channels.add(new Channel(quantity, column, unit(at, quantity), positive(at, "height_m")));
      unknown.addAll(at.untaken());
    }
    return channels;
  }

  private static Unit unit(Members at, String quantity) {
    String symbol = at.requiredText("unit", "degC");
    Optional<String> inside = Channel.insideUnit(quantity);
    List<Unit> fitting =
        Stream.of(Unit.values())
            .filter(unit -> inside.isEmpty() || unit.insideSymbol().equals(inside.get()))
            .toList();
    Optional<Unit> unit = Unit.ofSymbol(symbol).filter(fitting::contains);
    if (unit.isEmpty() && !symbol.isEmpty()) {
      String known = fitting.stream().map(Unit::symbol).collect(Collectors.joining(", "));
      at.problem("unit", "is \"" + symbol + "\"", "Use one of " + known);
    }
    return unit.orElse(Unit.DEG_C);
  }
}
