package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.span;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class OverflowCheckTest {

  /** The bucket holds 600 mm; it rains 1 mm/h for 20 h from hour 20. */
  private static Bucket rising(double fromMm, double mostMm) {
    return Bucket.every(10, 120)
        .level(hour -> Math.min(mostMm, fromMm + Math.max(0, Math.min(20, hour - 20))))
        .noise(0.03);
  }

  @Test
  void aLevelThatStopsAtTheCapacityOverflows() {
    assertThat(Raised.in(rising(590, 600), FindingKind.OVERFLOW))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.span().fromMs()).isBetween(ms(29.5), ms(32));
              assertThat(finding.span().toMs()).isBetween(ms(119.9), ms(120.2));
              assertThat(finding.doubted()).contains(finding.span());
              assertThat(finding.reason()).contains("600.0 mm", "holding 600 mm");
              assertThat(finding.proposal())
                  .isInstanceOfSatisfying(
                      Entry.BadInterval.class,
                      bad -> {
                        assertThat(bad.wires()).isEmpty();
                        assertThat(bad.reason()).isEqualTo(BadReason.OTHER);
                      });
            });
  }

  @Test
  void anOverflowIsNotCalledNearlyFullToo() {
    assertThat(Raised.in(rising(590, 600), FindingKind.NEAR_CAPACITY)).isEmpty();
  }

  @Test
  void aBucketFarFromFullDoesNot() {
    assertThat(Raised.in(rising(300, 1000), FindingKind.OVERFLOW)).isEmpty();
    assertThat(Raised.in(rising(300, 1000), FindingKind.NEAR_CAPACITY)).isEmpty();
  }

  @Test
  void aLevelThatGoesOnBeyondTheCapacityOnlyIsTooHigh() {
    assertThat(Raised.in(rising(595, 1000), FindingKind.OVERFLOW)).isEmpty();
    assertThat(Raised.in(rising(595, 1000), FindingKind.NEAR_CAPACITY)).hasSize(1);
  }

  @Test
  void whatIsMarkedIsNotRaisedAgain() {
    Bucket marked =
        rising(590, 600)
            .entry(new Entry.BadInterval(header("b"), span(32, 121), Set.of(), BadReason.OTHER));
    assertThat(Raised.in(marked, FindingKind.OVERFLOW)).isEmpty();
  }

  @Test
  void aBucketAtNineTenthsIsNearlyFull() {
    assertThat(Raised.in(rising(535, 1000), FindingKind.NEAR_CAPACITY))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.doubted()).isEmpty();
              assertThat(finding.reason()).contains("555 mm", "93 %", "600 mm");
              assertThat(finding.span().fromMs()).isBetween(ms(24.5), ms(25.5));
              assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
            });
  }

  @Test
  void aBucketThatFillsWithinAWeekIsNearlyFull() {
    Bucket soon = Bucket.every(60, 24 * 20).level(hour -> 150 + 15 * hour / 24).noise(0.03);
    Bucket later = Bucket.every(60, 24 * 20).level(hour -> 150 + 19 * hour / 24).noise(0.03);
    assertThat(Raised.in(soon, FindingKind.NEAR_CAPACITY)).isEmpty();
    assertThat(Raised.in(later, FindingKind.NEAR_CAPACITY))
        .singleElement()
        .satisfies(finding -> assertThat(finding.reason()).contains("19.0 mm a day"));
  }
}
