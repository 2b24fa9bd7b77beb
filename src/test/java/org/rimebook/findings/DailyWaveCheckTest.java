package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class DailyWaveCheckTest {

  private static final Check CHECK = new DailyWaveCheck();

  private static HandMade waving(double days, int wire, double mm) {
    return HandMade.every(10, days)
        .apart((w, hour) -> w == wire ? mm * Math.sin(2 * Math.PI * (hour - 9) / 24) : 0);
  }

  /** One wire of three moves by 0.51 mm: it lies 2/3 of that from their mean, the others 1/3. */
  @Test
  void aWireThatMovesOnceADayIsFoundWithWhatEachLiesFromTheirMean() {
    List<Finding> found = waving(20, 1, 0.51).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.kind()).isEqualTo(FindingKind.DAILY_WAVE);
    assertThat(finding.wires()).contains("w1");
    assertThat(finding.reason()).contains("w0 by 0.17 mm, w1 by 0.34 mm and w2 by 0.17 mm");
    assertThat(finding.span()).isEqualTo(HandMade.span(-1 / 6.0, 20 * 24 + 1 / 6.0));
    assertThat(finding.doubted()).isEmpty();
    assertThat(finding.proposal())
        .isInstanceOfSatisfying(
            Entry.Remark.class, remark -> assertThat(remark.about()).contains(finding.span()));
  }

  @Test
  void onlyWiresThatMoveFarFromTheMeanAreNamed() {
    assertThat(waving(20, 2, 0.36).found(CHECK))
        .singleElement()
        .satisfies(finding -> assertThat(finding.wires()).containsExactly("w2"));
  }

  @Test
  void aSmallWaveIsUsual() {
    assertThat(waving(20, 1, 0.15).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 20).found(CHECK)).isEmpty();
  }

  @Test
  void allWiresMovingAlikeDontMoveApart() {
    HandMade season = HandMade.every(10, 20).level(h -> 150 + 0.4 * Math.sin(2 * Math.PI * h / 24));
    assertThat(season.found(CHECK)).isEmpty();
  }

  @Test
  void aNorthernWireThatMovesMostHintsAtExchangedWires() {
    Finding finding =
        waving(20, 0, 0.45).named("north", "southeast", "southwest").found(CHECK).get(0);
    assertThat(finding.reason())
        .contains("north should move least but moves by 0.45 mm", "by 0.00 mm");
  }

  @Test
  void aSouthernWireThatMovesMostIsAsItShouldBe() {
    Finding finding =
        waving(20, 1, 0.45).named("north", "southeast", "southwest").found(CHECK).get(0);
    assertThat(finding.reason()).doesNotContain("should move least");
  }

  @Test
  void tenDaysTellNothingNorDoWetOnes() {
    assertThat(waving(10, 1, 0.45).found(CHECK)).isEmpty();
    assertThat(waving(20, 1, 0.45).level(hour -> 150 + hour / 8).found(CHECK)).isEmpty();
  }

  @Test
  void readingsSomebodyLeftOutArentRaised() {
    Entry bad =
        new Entry.BadInterval(
            HandMade.header("a"), HandMade.span(0, 480), Set.of("w1"), BadReason.WIRE_FAULT);
    assertThat(waving(20, 1, 0.45).entry(bad).found(CHECK)).isEmpty();
  }

  @Test
  void oneWireOrOneRowOrNoReadingTellsNothing() {
    assertThat(HandMade.ofOneWire(10, 20).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 0).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 20).level(hour -> Double.NaN).found(CHECK)).isEmpty();
  }

  @Test
  void itNeedsNoChannels() {
    assertThat(waving(20, 1, 0.45).withoutChannels().found(CHECK)).hasSize(1);
  }
}
