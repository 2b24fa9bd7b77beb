package org.rimebook.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.rimebook.record.PreviewColumn;
import org.rimebook.record.RecordPreview;
import org.rimebook.station.Channel;
import org.rimebook.station.JsonText;
import org.rimebook.station.StationSheet;
import org.rimebook.station.Unit;

/**
 * A station sheet drafted from the header and the first rows of a record. What a file can't tell
 * stands as null, so that reading the sheet names it until it is entered.
 *
 * @param text the sheet as JSON
 * @param guessed what was taken from the file, in words, to be checked
 * @param toEnter what is left to enter, in words
 */
public record SheetDraft(String text, List<String> guessed, List<String> toEnter) {

  /** A wire under a bucket rings between these [Hz]; common practice. */
  private static final double LOWEST_HZ = 300;

  private static final double HIGHEST_HZ = 6000;

  private static final Pattern FREQUENCY = Pattern.compile("hz|freq.*|f\\d*|vw\\d*|wire.*|count.*");

  private static final Pattern ROW_NUMBER = Pattern.compile("rec(ord)?|rn|row|id|no|n|seq|index");

  public SheetDraft {
    guessed = List.copyOf(guessed);
    toEnter = List.copyOf(toEnter);
  }

  /**
   * Drafts a sheet.
   *
   * @param preview what the record shows
   * @param name name to give the station until a person does
   */
  public static SheetDraft of(RecordPreview preview, String name) {
    List<String> guessed = new ArrayList<>();
    List<String> toEnter = new ArrayList<>();
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("format", StationSheet.FORMAT);
    root.put("name", name);
    root.put("latitude_deg", null);
    root.put("longitude_deg", null);
    root.put("elevation_m", null);
    root.put("utc_offset", null);
    root.put("day_starts_at", "00:00");
    toEnter.add("utc_offset: station time, hours and minutes east of UTC, no summer time");
    root.put("gauge", gauge());
    toEnter.add(
        "gauge: orifice_area_cm2, and capacity_mm, rim_height_m, wind_shield if known (null reads"
            + " as other)");
    root.put("wires", wires(preview, guessed, toEnter));
    root.put("record", record(preview, guessed, toEnter));
    root.put("channels", channels(preview, guessed));
    toEnter.add(
        "latitude_deg, longitude_deg, elevation_m, day_starts_at and the name, as you wish");
    return new SheetDraft(JsonText.laidOut(root), guessed, toEnter);
  }

  private static Map<String, Object> gauge() {
    Map<String, Object> gauge = new LinkedHashMap<>();
    gauge.put("orifice_area_cm2", null);
    gauge.put("capacity_mm", null);
    gauge.put("rim_height_m", null);
    gauge.put("wind_shield", null);
    return gauge;
  }

  private static List<Map<String, Object>> wires(
      RecordPreview preview, List<String> guessed, List<String> toEnter) {
    List<Map<String, Object>> wires = new ArrayList<>();
    for (PreviewColumn column : preview.columns()) {
      if (!isFrequency(column)) {
        continue;
      }
      Map<String, Object> calibration = new LinkedHashMap<>();
      calibration.put("from", null);
      calibration.put("a_cm_per_hz", null);
      calibration.put("b_cm_per_hz2", null);
      calibration.put("f0_hz", null);
      Map<String, Object> wire = new LinkedHashMap<>();
      wire.put("name", "wire " + (wires.size() + 1));
      wire.put("frequency_column", column.name());
      wire.put("calibrations", List.of(calibration));
      wires.add(wire);
      guessed.add(
          String.format(
              Locale.ROOT,
              "column %s is a wire: %.1f to %.1f Hz in the first rows",
              column.name(),
              column.least().orElse(Double.NaN),
              column.greatest().orElse(Double.NaN)));
    }
    toEnter.add(
        wires.isEmpty()
            ? "wires: no column looks like a frequency; name each wire and its frequency_column"
            : "wires: a_cm_per_hz, b_cm_per_hz2 and f0_hz of each from its sheet, and its name");
    if (wires.isEmpty()) {
      toEnter.addAll(counts(preview));
    }
    return wires;
  }

  /** What to enter when wires may be logged as counts, empty when no column looks so. */
  private static List<String> counts(RecordPreview preview) {
    List<String> counts =
        preview.columns().stream().filter(SheetDraft::mayCount).map(PreviewColumn::name).toList();
    return counts.isEmpty()
        ? List.of()
        : List.of(
            "record: if "
                + String.join(", ", counts)
                + " are counts, frequency_kind: \"counts\" and gate_s, the gate time [s]");
  }

  private static boolean mayCount(PreviewColumn column) {
    String name = column.name().toLowerCase(Locale.ROOT);
    return column.whole()
        && column.median().orElse(0) > HIGHEST_HZ
        && !ROW_NUMBER.matcher(name).matches();
  }

  private static boolean isFrequency(PreviewColumn column) {
    if (column.kind() != PreviewColumn.Kind.NUMBER || column.median().isEmpty()) {
      return false;
    }
    double median = column.median().getAsDouble();
    String name = column.name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", " ").trim();
    boolean named =
        column.unitText().equalsIgnoreCase("Hz")
            || List.of(name.split(" ")).stream().anyMatch(FREQUENCY.asMatchPredicate());
    return named && median >= LOWEST_HZ && median <= HIGHEST_HZ;
  }

  private static Map<String, Object> record(
      RecordPreview preview, List<String> guessed, List<String> toEnter) {
    Map<String, Object> record = new LinkedHashMap<>();
    record.put("files", preview.patterns());
    Optional<PreviewColumn> time =
        preview.columns().stream().filter(c -> c.kind() == PreviewColumn.Kind.TIME).findFirst();
    record.put("time_column", time.map(PreviewColumn::name).orElse(null));
    record.put(
        "missing",
        preview.columns().stream().flatMap(c -> c.missing().stream()).distinct().toList());
    time.ifPresent(c -> guessed.add("column " + c.name() + " is the time"));
    if (time.isEmpty()) {
      toEnter.add("record.time_column: no column looks like a time");
    }
    return record;
  }

  private static List<Map<String, Object>> channels(RecordPreview preview, List<String> guessed) {
    List<Map<String, Object>> channels = new ArrayList<>();
    for (PreviewColumn column : preview.columns()) {
      if (column.kind() != PreviewColumn.Kind.NUMBER || isFrequency(column)) {
        continue;
      }
      ChannelGuess.of(column)
          .ifPresent(
              guess -> {
                channels.add(channel(column, guess));
                guessed.add(
                    "column "
                        + column.name()
                        + " is "
                        + guess.quantity()
                        + " in "
                        + guess.unit().symbol());
              });
    }
    return channels;
  }

  private static Map<String, Object> channel(PreviewColumn column, ChannelGuess guess) {
    Map<String, Object> channel = new LinkedHashMap<>();
    channel.put("quantity", guess.quantity());
    channel.put("column", column.name());
    channel.put("unit", guess.unit().symbol());
    if (guess.quantity().equals(Channel.WIND_SPEED)) {
      channel.put("height_m", null);
    }
    return channel;
  }

  /** What a column beside the wires seems to hold, by its name and unit. */
  private record ChannelGuess(String quantity, Unit unit) {

    static Optional<ChannelGuess> of(PreviewColumn column) {
      String name = column.name().toLowerCase(Locale.ROOT);
      if (name.contains("dir")) {
        return Optional.empty();
      }
      if (name.contains("air") || name.contains("temp")) {
        return guess(Channel.AIR_TEMPERATURE, column, Unit.DEG_C);
      }
      if (name.contains("wind") || name.startsWith("ws")) {
        return guess(Channel.WIND_SPEED, column, Unit.METRE_PER_SECOND);
      }
      if (name.contains("batt") || name.contains("volt") || name.contains("supply")) {
        return guess(Channel.SUPPLY_VOLTAGE, column, Unit.VOLT);
      }
      return Optional.empty();
    }

    private static Optional<ChannelGuess> guess(
        String quantity, PreviewColumn column, Unit unlessWritten) {
      String written = column.unitText().replace("\u00b0", "deg").replace("deg ", "deg");
      Unit unit =
          Unit.ofSymbol(written.equals("C") ? "degC" : written)
              .filter(u -> u.insideSymbol().equals(unlessWritten.insideSymbol()))
              .orElse(unlessWritten);
      return Optional.of(new ChannelGuess(quantity, unit));
    }
  }
}
