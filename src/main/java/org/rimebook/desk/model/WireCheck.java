package org.rimebook.desk.model;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.rimebook.depth.CalibrationCheck;
import org.rimebook.depth.DepthRange;
import org.rimebook.season.Season;
import org.rimebook.station.Calibration;
import org.rimebook.station.Gauge;
import org.rimebook.station.InputException;
import org.rimebook.station.RecordLayout;
import org.rimebook.station.StationSheet;

/**
 * What is to be said of one wire as it is entered.
 *
 * @param fields faults of its fields
 * @param faults why its calibration is refused
 * @param alerts what is odd about it but accepted
 */
public record WireCheck(Map<WireField, String> fields, List<String> faults, List<String> alerts) {

  public WireCheck {
    fields = Map.copyOf(fields);
    faults = List.copyOf(faults);
    alerts = List.copyOf(alerts);
  }

  /** Whether nothing is refused. */
  public boolean fine() {
    return fields.isEmpty() && faults.isEmpty();
  }

  static WireCheck of(SeasonDraft draft, int number) {
    WireDraft wire = draft.wires().get(number);
    Map<WireField, String> fields = new EnumMap<>(WireField.class);
    for (WireField field : WireField.values()) {
      field.fault(wire.text(field)).ifPresent(fault -> fields.put(field, fault));
    }
    String name = wire.text(WireField.NAME).strip();
    boolean twice =
        draft.wires().stream().filter(w -> w.text(WireField.NAME).strip().equals(name)).count() > 1;
    if (twice && !name.isEmpty()) {
      fields.put(WireField.NAME, "Another wire has this name: give each its own");
    }
    Optional<Calibration> calibration = wire.calibration();
    if (calibration.isEmpty()) {
      return new WireCheck(fields, List.of(), List.of());
    }
    Gauge gauge = gauge(draft);
    try {
      List<String> alerts =
          new ArrayList<>(
              CalibrationCheck.of(sheet(wire, calibration.get(), gauge), Season.STATION_FILE)
                  .alerts());
      farOff(draft, number, DepthRange.of(gauge)).ifPresent(alerts::add);
      return new WireCheck(fields, List.of(), alerts);
    } catch (InputException e) {
      return new WireCheck(
          fields, e.problems().stream().map(DraftCheck::words).toList(), List.of());
    }
  }

  private static Optional<String> farOff(SeasonDraft draft, int wire, DepthRange range) {
    FirstReadings readings = FirstReadings.of(draft);
    OptionalInt row = readings.firstRead(wire);
    if (row.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble depth = readings.depthMm(row.getAsInt(), wire);
    double mm = depth.orElse(0);
    return mm >= range.lowestMm() && mm <= range.highestMm()
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "its first reading is %.0f mm, and readings outside %.0f to %.0f mm are left out:"
                    + " A, B or f0 may be another wire's, or the column",
                mm,
                range.lowestMm(),
                range.highestMm()));
  }

  private static Gauge gauge(SeasonDraft draft) {
    return new Gauge(
        draft.number(StationField.ORIFICE).orElse(1),
        draft.number(StationField.CAPACITY),
        OptionalDouble.empty(),
        draft.shield());
  }

  /** A sheet of nothing but this wire; the rest has no part in the check. */
  private static StationSheet sheet(WireDraft wire, Calibration calibration, Gauge gauge) {
    return new StationSheet(
        "",
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        ZoneOffset.UTC,
        LocalTime.MIDNIGHT,
        gauge,
        List.of(wire.wire(calibration)),
        new RecordLayout(
            List.of(),
            "",
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            RecordLayout.TimeIs.END,
            RecordLayout.FrequencyKind.HERTZ,
            OptionalDouble.empty()),
        List.of());
  }
}
