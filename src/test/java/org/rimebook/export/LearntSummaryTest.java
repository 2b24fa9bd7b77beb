package org.rimebook.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.rimebook.accumulation.Learnt;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;

class LearntSummaryTest {

  private static JsonNode learnt(SeasonResult result) throws IOException {
    String json = SeasonExport.texts(result, result.totals(Resolution.TENTH)).get("season.json");
    return new ObjectMapper().readTree(json).get("method").get("learnt");
  }

  @Test
  void theSummaryStatesWhatWasLearntToFourDigits() throws IOException {
    SeasonResult result =
        Bucket.every(10, 20 * 24)
            .noise(0.02)
            .weather(hour -> 8 * Math.sin(hour / 5), 2)
            .level(hour -> 250 * (1 - 4e-5 * 8 * Math.sin(hour / 5)))
            .result();
    Learnt learnt = result.estimate().learnt().orElseThrow();
    JsonNode node = learnt(result);
    double coefficient = learnt.drift().temperaturePerDegC().orElseThrow().value();
    assertThat(node.get("temperature_coefficient_per_degc").asDouble())
        .isCloseTo(coefficient, within(1e-8));
    assertThat(node.get("temperature_coefficient_u_per_degc").asDouble()).isPositive();
    assertThat(node.get("temperature_applied").asBoolean()).isTrue();
    assertThat(node.get("dry_hours").asInt()).isEqualTo(learnt.drift().dryHours());
    assertThat(node.get("node_noise_mm").asDouble()).isCloseTo(learnt.nodeNoiseMm(), within(1e-5));
    assertThat(node.get("wire_departures").findValuesAsText("wire")).hasSize(2);
    assertThat(node.get("daily_wave_mm_per_h")).hasSize(5);
    assertThat(node.get("evaporation_u_mm_per_d").asDouble()).isPositive();
  }

  @Test
  void whatCouldNotBeLearntIsSaidSo() throws IOException {
    JsonNode node = learnt(Bucket.every(10, 30).level(Bucket.rain(3, 8, 1)).result());
    assertThat(node.get("temperature_applied").asBoolean()).isFalse();
    assertThat(node.get("evaporation_applied").asBoolean()).isFalse();
    assertThat(node.has("temperature_coefficient_per_degc")).isFalse();
    assertThat(node.get("wire_departures")).isEmpty();
  }
}
