package org.rimebook.export;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;

class DataPackageTest {

  private static Map<String, String> texts() {
    SeasonResult result = Bucket.every(10, 30).level(Bucket.rain(3, 8, 1)).result();
    return SeasonExport.texts(result, result.totals(Resolution.TENTH));
  }

  @Test
  void everyColumnOfATableIsDescribedInItsOrder() throws IOException {
    Map<String, String> texts = texts();
    JsonNode root = new ObjectMapper().readTree(texts.get("datapackage.json"));
    for (JsonNode resource : root.get("resources")) {
      String header = texts.get(resource.get("path").asText()).lines().findFirst().orElseThrow();
      List<String> names = resource.get("schema").get("fields").findValuesAsText("name");
      assertThat(String.join(",", names)).isEqualTo(header);
    }
  }

  @Test
  void theColumnsAreThoseOfTheContract() {
    assertThat(texts().get("hourly.csv"))
        .startsWith(
            "start,end,catch_mm,uncertainty_mm,quality,completeness_pct,wires,"
                + "accumulated_since,adjusted_mm,phase,reasons\n"
                + "2025-01-10T00:00:00-07:00,2025-01-10T01:00:00-07:00,0.0,");
  }

  @Test
  void digestAndLengthAreThoseOfTheTable() throws IOException, GeneralSecurityException {
    Map<String, String> texts = texts();
    JsonNode root = new ObjectMapper().readTree(texts.get("datapackage.json"));
    assertThat(root.get("resources")).hasSize(2);
    for (JsonNode resource : root.get("resources")) {
      byte[] bytes = texts.get(resource.get("path").asText()).getBytes(StandardCharsets.UTF_8);
      assertThat(resource.get("bytes").asInt()).isEqualTo(bytes.length);
      assertThat(resource.get("hash").asText()).isEqualTo("sha256:" + sha256(bytes));
    }
  }

  private static String sha256(byte[] bytes) throws GeneralSecurityException {
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
    return String.format(Locale.ROOT, "%064x", new BigInteger(1, digest));
  }

  @ParameterizedTest
  @CsvSource({"Invented Ridge,invented-ridge", "Ödemåla 2,odemala-2", "氷,season"})
  void thePackageIsNamedWithinTheSpecification(String station, String name) throws IOException {
    String json = DataPackage.json(station, Map.of(), List.of());
    assertThat(new ObjectMapper().readTree(json).get("name").asText()).isEqualTo(name);
  }
}
