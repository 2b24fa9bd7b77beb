package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

/**
 * A taut wire of f0 under a depth D gives f² = f0² + 2 f0 D/A. On the calibration of another of f0'
 * that reads A (f0² - f0'²)/(2 f0') + D f0/f0'.
 */
class ExchangedWiresCheckTest {

  private static final Check CHECK = new ExchangedWiresCheck();

  private static HandMade season(double days) {
    return HandMade.every(10, days)
        .calibrated(HandMade.taut(1000), HandMade.taut(1050), HandMade.taut(1120));
  }

  /**
   * At 150 mm and A = 0.0172 cm/Hz w0 reads 166.3 mm with w1's frequency, w1 134.5 mm with w0's, w2
   * its 150 mm: √((16.1² + 15.8² + 0.3²)/3) = 13.0 mm about their mean.
   */
  @Test
  void exchangedColumnsAreFoundOverTheWholeSeason() {
    List<Finding> found = season(5).exchangedFrom(0, 1, 0, 2).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.kind()).isEqualTo(FindingKind.EXCHANGED_WIRES);
    assertThat(finding.wires()).containsExactly("w0", "w1");
    assertThat(finding.span()).isEqualTo(HandMade.span(-1 / 6.0, 120 + 1 / 6.0));
    assertThat(finding.reason())
        .contains(
            "13.0 mm apart by the station sheet, 0.0 mm with calibrations exchanged.",
            "column f0 is w1's and f1 is w0's",
            "exchange the frequency columns of w0 and w1.");
    assertThat(finding.doubted()).contains(finding.span());
    assertThat(finding.proposal())
        .isEqualTo(
            new Entry.BadInterval(
                new Entry.Header("", "", "", "Wires exchanged."),
                finding.span(),
                Set.of("w0", "w1"),
                BadReason.WIRE_FAULT));
  }

  /**
   * Slopes of 1.05, 1/1.05 and 1 about a mean of 1.0008: 4.9 % at most. Thirds of the hours lie 160
   * mm apart.
   */
  @Test
  void incrementsOverALargeRiseAreToldToo() {
    Finding finding = season(10).level(h -> 150 + h).exchangedFrom(0, 1, 0, 2).found(CHECK).get(0);
    assertThat(finding.reason())
        .containsPattern("over a rise of 16[01] mm increments differ by 4.9 % and 0.0 %");
  }

  @Test
  void leadsExchangedAtAVisitAreFoundFromItsEndOn() {
    Entry visit =
        new Entry.ServiceVisit(
            HandMade.header("a"),
            HandMade.span(59, 60),
            List.of(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    List<Finding> found = season(6).exchangedFrom(60, 0, 2, 1).entry(visit).found(CHECK);
    assertThat(found)
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.wires()).containsExactly("w1", "w2");
              assertThat(finding.span()).isEqualTo(HandMade.span(60, 144 + 1 / 6.0));
              assertThat(finding.reason())
                  .contains("from 2025-01-12 12:00 on", "exchange the calibrations of w1 and w2");
            });
  }

  @Test
  void whenNoWireIsRightNoneIsLeftOut() {
    assertThat(season(5).exchangedFrom(0, 1, 2, 0).found(CHECK))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.wires()).containsExactly("w0", "w1", "w2");
              assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
            });
  }

  @Test
  void wiresOnTheirOwnCalibrationsArentExchanged() {
    assertThat(season(5).found(CHECK)).isEmpty();
    assertThat(season(5).level(hour -> 150 + hour).found(CHECK)).isEmpty();
  }

  @Test
  void aTiltedBucketIsNotExchangedWires() {
    assertThat(season(5).apart((wire, hour) -> 1.5 * (wire - 1)).found(CHECK)).isEmpty();
  }

  @Test
  void aDayAndAHalfIsTooShort() {
    assertThat(season(1.5).exchangedFrom(0, 1, 0, 2).found(CHECK)).isEmpty();
  }

  @Test
  void aWireSomebodyLeftOutIsNotRaised() {
    Entry bad =
        new Entry.BadInterval(
            HandMade.header("a"), HandMade.span(-1, 121), Set.of("w0"), BadReason.WIRE_FAULT);
    assertThat(season(5).exchangedFrom(0, 1, 0, 2).entry(bad).found(CHECK)).isEmpty();
  }

  @Test
  void oneWireOrOneRowOrNoReadingTellsNothing() {
    assertThat(HandMade.ofOneWire(10, 5).found(CHECK)).isEmpty();
    assertThat(season(0).exchangedFrom(0, 1, 0, 2).found(CHECK)).isEmpty();
    assertThat(season(5).level(hour -> Double.NaN).found(CHECK)).isEmpty();
  }

  @Test
  void itNeedsNoChannels() {
    assertThat(season(5).exchangedFrom(0, 1, 0, 2).withoutChannels().found(CHECK)).hasSize(1);
  }
}
