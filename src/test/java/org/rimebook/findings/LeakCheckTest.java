package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.span;

import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;

class LeakCheckTest {

  private static double leaked(double hour, double mmPerDay) {
    return mmPerDay * Math.max(0, Math.min(240, hour - 240)) / 24;
  }

  /** From day 10 to day 20 of 30, in deep cold. */
  private static Bucket leaking(double mmPerDay) {
    return Bucket.every(20, 720)
        .level(hour -> 300 - leaked(hour, mmPerDay))
        .weather(hour -> -12, 2)
        .noise(0.05);
  }

  @Test
  void aLevelThatFallsByNightAndDayInTheColdLeaks() {
    assertThat(Raised.in(leaking(0.8), FindingKind.LEAK))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.span().fromMs()).isBetween(ms(220), ms(250));
              assertThat(finding.span().toMs()).isBetween(ms(470), ms(500));
              assertThat(finding.doubted()).contains(finding.span());
              assertThat(finding.reason()).contains("-12.0 °C", "by night");
              assertThat(estimatedMm(finding)).isBetween(0.0, 0.3);
            });
  }

  @Test
  void whatWasCaughtIsProposedAsTheChangeOfLevelAndWhatLeaked() {
    // 6 mm fall from hour 360 to 366, half-way through.
    Bucket rain =
        Bucket.every(20, 720)
            .level(hour -> 300 - leaked(hour, 0.8) + Math.max(0, Math.min(6, hour - 360)))
            .weather(hour -> -12, 2)
            .noise(0.05);
    assertThat(Raised.in(rain, FindingKind.LEAK))
        .singleElement()
        .satisfies(finding -> assertThat(estimatedMm(finding)).isBetween(5.6, 6.4));
  }

  private static double estimatedMm(Finding finding) {
    assertThat(finding.proposal()).isInstanceOf(Entry.Estimate.class);
    return ((Entry.Estimate) finding.proposal()).totalMm();
  }

  @Test
  void aLeakIsNotCalledEvaporationToo() {
    assertThat(Raised.in(leaking(0.8), FindingKind.EVAPORATION)).isEmpty();
  }

  @Test
  void aTightBucketDoesNot() {
    assertThat(Raised.in(leaking(0), FindingKind.LEAK)).isEmpty();
    assertThat(Raised.in(leaking(0.1), FindingKind.LEAK)).isEmpty();
  }

  @Test
  void whatFallsByDayOnlyIsNoLeak() {
    Bucket sunny =
        Bucket.every(20, 720)
            .level(
                hour -> {
                  double day = Math.floor(hour / 24);
                  double lit = Math.max(0, Math.min(10, hour - 24 * day - 8)) / 10;
                  return 300 - 0.6 * (day + lit);
                })
            .weather(hour -> 8, 2)
            .noise(0.05);
    assertThat(Raised.in(sunny, FindingKind.LEAK)).isEmpty();
    assertThat(Raised.in(sunny, FindingKind.EVAPORATION)).hasSize(1);
  }

  @Test
  void oneWireThatCreepsIsNoLeak() {
    Bucket creeping = Bucket.every(20, 720).level(hour -> 300).noise(0.05);
    for (int hour = 240; hour < 480; hour += 6) {
      creeping.pull(0, hour, -0.25);
    }
    assertThat(Raised.in(creeping, FindingKind.LEAK)).isEmpty();
  }

  @Test
  void aMarkedDrySpellIsNotRaisedAgain() {
    Bucket marked = leaking(0.8).entry(new Entry.DrySpell(header("d"), span(200, 520)));
    assertThat(Raised.in(marked, FindingKind.LEAK)).isEmpty();
  }
}
