package org.rimebook.station;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes a station sheet in the layout of the contract; reading the text gives the sheet back.
 * Members of an earlier text that this version doesn't know are kept where they stood: in the root,
 * the gauge and the record, in the wire of the same name, the calibration at the same place, and
 * the channel of the same column.
 */
public final class StationSheetWriter {

  /** Numbers keep their digits on the way through. */
  private static final ObjectReader READER =
      JsonMapper.builder()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .build()
          .readerFor(new TypeReference<Map<String, Object>>() {});

  private final ZoneOffset offset;

  private StationSheetWriter(ZoneOffset offset) {
    this.offset = offset;
  }

  /**
   * The text of a sheet.
   *
   * @param sheet the sheet
   * @param earlier the text it replaces, whose unknown members are kept
   * @throws InputException when the earlier text isn't a JSON object
   */
  public static String write(StationSheet sheet, Optional<String> earlier) throws InputException {
    Map<String, Object> root = earlier.isPresent() ? parse(earlier.get()) : Map.of();
    return JsonText.laidOut(new StationSheetWriter(sheet.utcOffset()).root(sheet, root));
  }

  private static Map<String, Object> parse(String text) throws InputException {
    List<Problem> problems = new ArrayList<>();
    String file = "station.json";
    Members.of(file, "", Json.parse(text, file, 1), problems);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    try {
      return READER.readValue(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("an object that was read can't fail to be read again", e);
    }
  }

  private Map<String, Object> root(StationSheet sheet, Map<?, ?> earlier) {
    JsonMembers root = new JsonMembers();
    root.put("format", StationSheet.FORMAT);
    root.put("name", sheet.name());
    root.put("latitude_deg", sheet.latitudeDeg());
    root.put("longitude_deg", sheet.longitudeDeg());
    root.put("elevation_m", sheet.elevationM());
    root.put("utc_offset", offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId());
    root.put("day_starts_at", sheet.dayStartsAt().toString());
    root.put("gauge", gauge(sheet.gauge(), JsonMembers.objectIn(earlier, "gauge")));
    List<Map<?, ?>> wires = JsonMembers.objectsIn(earlier, "wires");
    root.put("wires", sheet.wires().stream().map(wire -> wire(wire, wires)).toList());
    root.put("record", record(sheet.layout(), JsonMembers.objectIn(earlier, "record")));
    List<Map<?, ?>> channels = JsonMembers.objectsIn(earlier, "channels");
    root.put("channels", sheet.channels().stream().map(c -> channel(c, channels)).toList());
    return root.with(earlier);
  }

  private static Map<String, Object> gauge(Gauge gauge, Map<?, ?> earlier) {
    JsonMembers members = new JsonMembers();
    members.put("orifice_area_cm2", gauge.orificeAreaCm2());
    members.put("capacity_mm", gauge.capacityMm());
    members.put("rim_height_m", gauge.rimHeightM());
    members.put("wind_shield", gauge.windShield().code());
    return members.with(earlier);
  }

  private Map<String, Object> wire(Wire wire, List<Map<?, ?>> earlierWires) {
    Map<?, ?> earlier = JsonMembers.first(earlierWires, "name", wire.name());
    List<Map<?, ?>> sheets = JsonMembers.objectsIn(earlier, "calibrations");
    List<Map<String, Object>> calibrations = new ArrayList<>();
    for (Calibration calibration : wire.calibrations()) {
      int index = calibrations.size();
      calibrations.add(
          calibration(calibration, index < sheets.size() ? sheets.get(index) : Map.of()));
    }
    JsonMembers members = new JsonMembers();
    members.put("name", wire.name());
    members.put("frequency_column", wire.frequencyColumn());
    members.put("lead", wire.lead());
    members.put("calibrations", calibrations);
    members.put("temperature_per_degc", wire.temperaturePerDegC());
    return members.with(earlier);
  }

  private Map<String, Object> calibration(Calibration calibration, Map<?, ?> earlier) {
    JsonMembers members = new JsonMembers();
    members.put("from", calibration.from().map(this::time).orElse(null));
    members.put("a_cm_per_hz", calibration.aCmPerHz());
    members.put("b_cm_per_hz2", calibration.bCmPerHz2());
    members.put("f0_hz", calibration.f0Hz());
    return members.with(earlier);
  }

  private String time(Instant instant) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(instant.atOffset(offset));
  }

  private static Map<String, Object> record(RecordLayout layout, Map<?, ?> earlier) {
    boolean start = layout.timeIs() == RecordLayout.TimeIs.START;
    boolean counts = layout.frequencyKind() == RecordLayout.FrequencyKind.COUNTS;
    JsonMembers members = new JsonMembers();
    members.put("files", layout.files());
    members.put("time_column", layout.timeColumn());
    members.put("missing", layout.missing());
    members.put("delimiter", layout.delimiter().map(String::valueOf));
    members.put("decimal", layout.decimal().map(String::valueOf));
    members.put("time_format", layout.timeFormat());
    members.put("time_is", Optional.of("start").filter(word -> start));
    members.put("frequency_kind", Optional.of("counts").filter(word -> counts));
    members.put("gate_s", layout.gateS());
    return members.with(earlier);
  }

  private static Map<String, Object> channel(Channel channel, List<Map<?, ?>> earlierChannels) {
    JsonMembers members = new JsonMembers();
    members.put("quantity", channel.quantity());
    members.put("column", channel.column());
    members.put("unit", channel.unit().symbol());
    members.put("height_m", channel.heightM());
    return members.with(JsonMembers.first(earlierChannels, "column", channel.column()));
  }
}
