package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;

class EvaporationCheckTest {

  private static final double DAYS = 40;

  private static double airDegC(double hour) {
    return 4 - 5 * Math.cos(2 * Math.PI * (hour - 3) / 24);
  }

  /** Falls between 8 and 20 h, with 5 mm of rain every tenth day. */
  private static double levelMm(double hour, double mmPerDay) {
    double day = Math.floor(hour / 24);
    double sunny = Math.max(0, Math.min(12, hour - 24 * day - 8)) / 12;
    double rained = 5 * Math.floor(hour / 240);
    return 300 + rained - mmPerDay * (day + sunny);
  }

  private static Bucket mild(double mmPerDay) {
    return Bucket.every(20, 24 * DAYS)
        .level(hour -> levelMm(hour, mmPerDay) * (1 - 4e-5 * airDegC(hour)))
        .weather(EvaporationCheckTest::airDegC, 3)
        .noise(0.05);
  }

  @Test
  void aLevelThatFallsInMildDaysEvaporates() {
    assertThat(Raised.in(mild(0.2), FindingKind.EVAPORATION))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.reason()).contains("fell by 0.20 mm a day");
              assertThat(finding.doubted()).isEmpty();
              assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
              assertThat(finding.span().lengthMs()).isGreaterThan((long) (39.9 * 86_400_000));
            });
  }

  @Test
  void aLevelThatStandsDoesNot() {
    assertThat(Raised.in(mild(0), FindingKind.EVAPORATION)).isEmpty();
    assertThat(Raised.in(mild(0.01), FindingKind.EVAPORATION)).isEmpty();
  }

  @Test
  void whatWarmWiresReadLessIsNotEvaporation() {
    Bucket warming =
        Bucket.every(20, 24 * DAYS)
            .level(hour -> 500 * (1 - 4e-5 * (hour / 24 - 5)))
            .weather(hour -> hour / 24 - 5, 3)
            .noise(0.05);
    assertThat(Raised.in(warming, FindingKind.EVAPORATION)).isEmpty();
  }

  @Test
  void aFewDaysTellNothing() {
    Bucket few =
        Bucket.every(20, 24 * 3)
            .level(hour -> levelMm(hour, 0.4))
            .weather(EvaporationCheckTest::airDegC, 3);
    assertThat(Raised.in(few, FindingKind.EVAPORATION)).isEmpty();
  }

  @Test
  void aSingleReadingTellsNothing() {
    assertThat(Bucket.every(20, 0).result().findings().open()).isEmpty();
  }
}
