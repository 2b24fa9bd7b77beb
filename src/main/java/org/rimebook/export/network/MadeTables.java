package org.rimebook.export.network;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.rimebook.export.SeasonExport;
import org.rimebook.export.verify.KeptInputs;
import org.rimebook.season.Season;
import org.rimebook.season.Version;
import org.rimebook.station.Sha256;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;

/** The tables of a season as they lie in their folder. */
final class MadeTables {

  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private final Path folder;

  MadeTables(Path folder) {
    this.folder = folder;
  }

  /**
   * Whether they are whole, by this version, at that resolution and from these inputs, so that
   * making them again would change nothing.
   */
  boolean current(Season.Digests digests, Resolution resolution) throws IOException {
    Optional<String> summary = text(SeasonExport.SUMMARY);
    Optional<KeptInputs> kept = summary.flatMap(KeptInputs::read);
    return kept.isPresent()
        && kept.get().madeBy().equals("rimebook " + Version.number())
        && kept.get().resolution().equals(Optional.of(resolution))
        && kept.get().recordSha256().equals(digests.record())
        && kept.get().stationSha256().equals(digests.station())
        && kept.get().notebookSha256().equals(digests.notebook())
        && whole();
  }

  /** Whether the tables are those their description was written for. */
  private boolean whole() throws IOException {
    JsonNode description = json(SeasonExport.DESCRIPTION);
    int found = 0;
    for (JsonNode resource : description.path("resources")) {
      String name = resource.path("path").asText();
      boolean table = name.equals(SeasonExport.HOURLY) || name.equals(SeasonExport.DAILY);
      if (table && Files.isRegularFile(folder.resolve(name))) {
        String sha256 = Sha256.hex(Files.readAllBytes(folder.resolve(name)));
        found += resource.path("hash").asText().equals("sha256:" + sha256) ? 1 : 0;
      }
    }
    return found == 2;
  }

  /** What they say of the season. */
  NetworkRow row(String name) throws IOException {
    JsonNode root = json(SeasonExport.SUMMARY);
    JsonNode totals = root.path("totals");
    return new NetworkRow(
        name,
        root.path("station").path("name").asText(),
        totals.path("from").asText(),
        totals.path("to").asText(),
        number(totals.path("catch_mm")),
        number(totals.path("uncertainty_mm")),
        number(totals.path("completeness_pct")),
        worst(totals.path("days_by_quality")),
        String.valueOf(root.path("findings").size()),
        Optional.empty());
  }

  private static String number(JsonNode node) {
    return node.isNumber() ? node.decimalValue().toPlainString() : "";
  }

  private static String worst(JsonNode days) {
    String worst = "";
    for (Quality quality : Quality.values()) {
      worst = days.path(quality.code()).asInt() > 0 ? quality.code() : worst;
    }
    return worst;
  }

  private JsonNode json(String name) throws IOException {
    try {
      return MAPPER.readTree(text(name).orElse("null"));
    } catch (JsonProcessingException e) {
      return MAPPER.nullNode();
    }
  }

  private Optional<String> text(String name) throws IOException {
    Path file = folder.resolve(name);
    return Files.isRegularFile(file)
        ? Optional.of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8))
        : Optional.empty();
  }
}
