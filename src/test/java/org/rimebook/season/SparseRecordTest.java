package org.rimebook.season;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.fixture.Bucket;
import org.rimebook.totals.Resolution;

/** Records read far more seldom than an hour: what is worked out by the hour has none to go by. */
class SparseRecordTest {

  private static final int DAYS = 280;

  private static SeasonResult everyMinutes(int minutes) {
    return Bucket.every(minutes, 24 * DAYS)
        .level(hour -> 100 + 1.9 * hour / 24)
        .weather(hour -> -3, 4)
        .noise(0.3)
        .result();
  }

  @ParameterizedTest
  @ValueSource(ints = {120, 540, 1440, 2880, 7000, 14_400})
  void aRecordOfFewReadingsIsComputedLikeAnyOther(int minutes) {
    assertThat(everyMinutes(minutes).totals(Resolution.TENTH).daily())
        .hasSizeBetween(DAYS - 15, DAYS + 15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 3, 4, 6, 9, 12})
  void aSteepRiseAtTheVeryEndIsNoFault(double hoursBeforeEnd) {
    double end = 24.0 * 20;
    SeasonResult result =
        Bucket.every(10, end)
            .level(hour -> hour < end - hoursBeforeEnd ? 100 : 130)
            .weather(hour -> -3, 4)
            .noise(0.02)
            .result();
    assertThat(result.findings()).isNotNull();
  }
}
