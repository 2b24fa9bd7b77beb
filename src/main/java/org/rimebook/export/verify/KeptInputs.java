package org.rimebook.export.verify;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.rimebook.totals.Resolution;

/**
 * What {@code season.json} keeps of the inputs its tables were made from. A text that isn't there
 * is empty.
 *
 * @param madeBy program and version
 * @param resolution resolution of the totals
 * @param recordSha256 digest of the record
 * @param files digest of each of the record's files by name; empty when it wasn't kept
 * @param stationSha256 digest of the station sheet
 * @param notebookSha256 digest of the notebook
 * @param entries digest of each entry by id; absent when it wasn't kept
 */
public record KeptInputs(
    String madeBy,
    Optional<Resolution> resolution,
    String recordSha256,
    Map<String, String> files,
    String stationSha256,
    String notebookSha256,
    Optional<Map<String, String>> entries) {

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  public KeptInputs {
    files = new LinkedHashMap<>(files);
    entries = entries.map(LinkedHashMap::new);
  }

  /**
   * Reads them.
   *
   * @param json text of a {@code season.json}; empty when it isn't JSON or not of that format
   */
  public static Optional<KeptInputs> read(String json) {
    try {
      JsonNode root = MAPPER.readTree(json);
      boolean known = root.path("format").asText().equals("rimebook-season/1");
      return known ? Optional.of(of(root)) : Optional.empty();
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }

  private static KeptInputs of(JsonNode root) {
    JsonNode record = root.path("record");
    JsonNode notebook = root.path("notebook");
    Map<String, String> files = new LinkedHashMap<>();
    for (JsonNode file : record.path("files")) {
      if (file.hasNonNull("sha256")) {
        files.put(file.path("file").asText(), file.path("sha256").asText());
      }
    }
    Map<String, String> entries = new LinkedHashMap<>();
    JsonNode kept = notebook.path("entry_sha256");
    kept.properties().forEach(entry -> entries.put(entry.getKey(), entry.getValue().asText()));
    return new KeptInputs(
        root.path("made_by").asText(),
        Resolution.of(root.path("totals").path("resolution_mm").asText()),
        record.path("sha256").asText(),
        files,
        root.path("station_sha256").asText(),
        notebook.path("sha256").asText(),
        kept.isObject() ? Optional.of(entries) : Optional.empty());
  }
}
