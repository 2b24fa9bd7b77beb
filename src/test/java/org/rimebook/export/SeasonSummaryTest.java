package org.rimebook.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;

class SeasonSummaryTest {

  private static JsonNode totals(Bucket bucket) throws IOException {
    SeasonResult result = bucket.result();
    String json = SeasonSummary.json(result, result.totals(Resolution.HUNDREDTH));
    return new ObjectMapper().readTree(json).get("totals");
  }

  private static Bucket snowfall() {
    return Bucket.every(10, 48).level(Bucket.rain(3, 8, 2, 30, 35, 1));
  }

  /**
   * Single-Alter, 5 m/s at the rim, −5 °C: CE = 0.572600 (Kochendorfer et al. 2017, Hydrol. Earth
   * Syst. Sci. 21, 3525–3542, eq. 3). The spread of published adjusted totals is 0.69/√12/0.334 of
   * what is added (Smith et al. 2020, Hydrol. Earth Syst. Sci. 24, 4025–4043, abstract).
   */
  @Test
  void theSeasonHasAnAdjustedTotalWithItsUncertainty() throws IOException {
    JsonNode totals = totals(snowfall().weather(hour -> -5, 5 / 0.767010));
    double caught = totals.get("adjusted_from_catch_mm").asDouble();
    double adjusted = totals.get("adjusted_mm").asDouble();
    assertThat(caught).isEqualTo(totals.get("catch_mm").asDouble()).isCloseTo(15, within(0.1));
    assertThat(adjusted).isCloseTo(caught / 0.572600, within(0.01));
    double added = 0.69 / Math.sqrt(12) / 0.334 * (adjusted - caught);
    double raised = totals.get("uncertainty_mm").asDouble() / 0.572600;
    assertThat(totals.get("adjusted_uncertainty_mm").asDouble())
        .isCloseTo(Math.hypot(added, raised), within(0.002));
  }

  @Test
  void hoursThatCouldNotBeAdjustedAreLeftOutOfBothSums() throws IOException {
    JsonNode totals = totals(snowfall().weather(hour -> -5, hour -> hour < 20 ? 0 : Double.NaN));
    assertThat(totals.get("catch_mm").asDouble()).isCloseTo(15, within(0.1));
    assertThat(totals.get("adjusted_from_catch_mm").asDouble()).isCloseTo(10, within(0.1));
    assertThat(totals.get("adjusted_mm")).isEqualTo(totals.get("adjusted_from_catch_mm"));
    assertThat(totals.get("adjusted_uncertainty_mm").asDouble()).isBetween(0.0001, 0.2);
  }

  @Test
  void withoutWeatherThereIsNoAdjustedTotal() throws IOException {
    JsonNode totals = totals(snowfall());
    assertThat(totals.get("adjusted_mm").isNull()).isTrue();
    assertThat(totals.get("adjusted_uncertainty_mm").isNull()).isTrue();
    assertThat(totals.get("adjusted_from_catch_mm").isNull()).isTrue();
  }
}
