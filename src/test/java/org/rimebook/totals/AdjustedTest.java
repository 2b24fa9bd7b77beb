package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.undercatch.Phase;

class AdjustedTest {

  private static Totals snow(double airC, double gapTo) {
    return Bucket.every(10, 48)
        .level(Bucket.rain(3, 8, 2))
        .weather(hour -> airC, 5 / 0.767010)
        .silent(4, gapTo)
        .totals();
  }

  @Test
  void snowInWindIsAdjustedHourByHour() {
    TotalRow hour = snow(-5, 4).hourly().get(5);
    // Single-Alter, 5 m/s at the rim, -5 degC: CE = 0.572600 (Kochendorfer et al. 2017, HESS 21,
    // 3525, eq. 3); 5 m/s at 2 m are 5 / 0.767010 at 10 m over snow, z0 = 0.01 m.
    assertThat(hour.adjustedUnits().orElseThrow() / 100.0).isCloseTo(2 / 0.572600, within(0.05));
    assertThat(hour.catchUnits().orElseThrow() / 100.0).isCloseTo(2, within(0.02));
    assertThat(hour.phase()).contains(Phase.SNOW);
  }

  @Test
  void aDayAddsUpItsAdjustedHours() {
    Totals totals = snow(-5, 4);
    long sum =
        totals.hourly().subList(0, 24).stream()
            .mapToLong(hour -> hour.adjustedUnits().orElseThrow())
            .sum();
    assertThat(totals.daily().get(0).adjustedUnits()).hasValue(sum);
    assertThat(totals.daily().get(0).phase()).contains(Phase.SNOW);
  }

  @Test
  void anAccumulatedTotalHasNoWindOfItsOwn() {
    Totals totals = snow(-5, 7);
    assertThat(totals.hourly().get(6).accumulatedSinceMs()).isPresent();
    assertThat(totals.hourly().get(6).adjustedUnits()).isEmpty();
    assertThat(totals.daily().get(0).adjustedUnits()).isEmpty();
  }

  /** At 3 °C and 30 % a bulb is below −1 °C, and what falls on it is snow. */
  @Test
  void humidityTellsSnowFromRainAboveFreezing() {
    assertThat(showers(30).hourly().get(5).phase()).contains(Phase.SNOW);
    assertThat(showers(98).hourly().get(5).phase()).contains(Phase.RAIN);
    assertThat(showers(-999).hourly().get(5).phase()).contains(Phase.RAIN);
  }

  private static Totals showers(double humidityPct) {
    return Bucket.every(10, 48)
        .level(Bucket.rain(3, 8, 2))
        .weather(hour -> 3, hour -> 1, hour -> 0, hour -> humidityPct)
        .totals();
  }
}
