package org.rimebook.desk.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.station.JsonText;
import org.rimebook.station.RecordLayout.TimeIs;
import org.rimebook.station.StationSheet;

/** The station sheet of a draft as text: what isn't known stands as null. */
final class DraftText {

  private final SeasonDraft draft;

  private DraftText(SeasonDraft draft) {
    this.draft = draft;
  }

  static String of(SeasonDraft draft) {
    return JsonText.laidOut(new DraftText(draft).root());
  }

  private Map<String, Object> root() {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("format", StationSheet.FORMAT);
    root.put("name", text(StationField.NAME));
    root.put("latitude_deg", number(StationField.LATITUDE));
    root.put("longitude_deg", number(StationField.LONGITUDE));
    root.put("elevation_m", number(StationField.ELEVATION));
    root.put(
        "utc_offset",
        StationField.offset(draft.text(StationField.UTC_OFFSET))
            .map(offset -> offset.getId().equals("Z") ? "+00:00" : offset.getId())
            .orElse(null));
    root.put("day_starts_at", text(StationField.DAY_START));
    Map<String, Object> gauge = new LinkedHashMap<>();
    gauge.put("orifice_area_cm2", number(StationField.ORIFICE));
    gauge.put("capacity_mm", number(StationField.CAPACITY));
    gauge.put("rim_height_m", number(StationField.RIM));
    gauge.put("wind_shield", draft.shield().code());
    root.put("gauge", gauge);
    root.put("wires", draft.wires().stream().map(DraftText::wire).toList());
    root.put("record", record());
    root.put("channels", channels());
    return root;
  }

  private static Map<String, Object> wire(WireDraft wire) {
    Map<String, Object> calibration = new LinkedHashMap<>();
    calibration.put("from", null);
    calibration.put("a_cm_per_hz", orNull(wire.number(WireField.A)));
    calibration.put("b_cm_per_hz2", orNull(wire.number(WireField.B)));
    calibration.put("f0_hz", orNull(wire.number(WireField.F0)));
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("name", blankAsNull(wire.text(WireField.NAME)));
    members.put("frequency_column", wire.column());
    Optional.ofNullable(blankAsNull(wire.text(WireField.LEAD)))
        .ifPresent(lead -> members.put("lead", lead));
    members.put("calibrations", List.of(calibration));
    return members;
  }

  private Map<String, Object> record() {
    Map<String, Object> record = new LinkedHashMap<>();
    record.put("files", draft.source().preview().patterns());
    record.put("time_column", timeColumn().orElse(null));
    record.put(
        "missing",
        draft.source().preview().columns().stream()
            .flatMap(column -> column.missing().stream())
            .distinct()
            .toList());
    if (draft.timeIs() == TimeIs.START) {
      record.put("time_is", "start");
    }
    draft
        .number(StationField.GATE)
        .ifPresent(
            gate -> {
              record.put("frequency_kind", "counts");
              record.put("gate_s", gate);
            });
    return record;
  }

  private Optional<String> timeColumn() {
    for (int column = 0; column < draft.columns().size(); column++) {
      if (draft.columns().get(column).role() == ColumnRole.TIME) {
        return Optional.of(draft.columnName(column));
      }
    }
    return Optional.empty();
  }

  private List<Map<String, Object>> channels() {
    List<Map<String, Object>> channels = new ArrayList<>();
    for (int column = 0; column < draft.columns().size(); column++) {
      ColumnUse use = draft.columns().get(column);
      if (use.role().isChannel()) {
        Map<String, Object> channel = new LinkedHashMap<>();
        channel.put("quantity", use.role().quantity());
        channel.put("column", draft.columnName(column));
        channel.put("unit", use.unit().orElseThrow().symbol());
        if (use.takesHeight()) {
          channel.put("height_m", orNull(Numbers.read(use.heightText())));
        }
        channels.add(channel);
      }
    }
    return channels;
  }

  private String text(StationField field) {
    String text = draft.text(field);
    return field.fault(text).isPresent() ? null : blankAsNull(text);
  }

  private Double number(StationField field) {
    return orNull(draft.number(field));
  }

  private static String blankAsNull(String text) {
    return text.isBlank() ? null : text.strip();
  }

  private static Double orNull(OptionalDouble number) {
    return number.isPresent() ? Double.valueOf(number.getAsDouble()) : null;
  }
}
