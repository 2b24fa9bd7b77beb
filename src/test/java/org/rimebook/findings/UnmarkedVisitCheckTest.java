package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;

class UnmarkedVisitCheckTest {

  private static final Check CHECK = new UnmarkedVisitCheck();

  private static DoubleUnaryOperator visit(double offFrom, double offTo, double after) {
    return hour -> hour < offFrom ? 400 : hour < offTo ? 1 : after;
  }

  private static Entry.ServiceVisit proposed(Finding finding) {
    return (Entry.ServiceVisit) finding.proposal();
  }

  @Test
  void bucketEmptiedAndChargedIsAVisitOverWhatItDisturbed() {
    List<Finding> found = HandMade.every(2, 3).level(visit(34, 34.5, 120)).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(34, within(0.1));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(34.5, within(0.1));
    assertThat(proposed(finding).actions())
        .containsExactly(VisitAction.EMPTIED, VisitAction.RECHARGED);
    assertThat(finding.reason()).contains("400.", "120.", "-280.0 mm");
    assertThat(proposed(finding).header().note()).contains("5.6 L", "2.40 L", "200 cm²");
    assertThat(finding.doubted()).contains(finding.span());
  }

  @Test
  void bucketEmptiedAndLeftEmptyIsntCalledCharged() {
    List<Finding> found = HandMade.every(2, 3).level(h -> h < 34 ? 400 : 1).found(CHECK);
    assertThat(proposed(found.get(0)).actions()).containsExactly(VisitAction.EMPTIED);
  }

  @Test
  void bucketLiftedAndPutBackIsAnInspectionAtAnyHour() {
    List<Finding> found = HandMade.every(5, 3).level(visit(26, 26.5, 400)).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(proposed(found.get(0)).actions()).containsExactly(VisitAction.INSPECTED);
  }

  @Test
  void oilPouredInAtOnceByDayIsAVisitWithItsLitres() {
    List<Finding> found = HandMade.every(1, 3).level(h -> h < 35 ? 150 : 157).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(proposed(found.get(0)).actions()).containsExactly(VisitAction.OIL_ADDED);
    assertThat(proposed(found.get(0)).header().note()).contains("7.0 mm", "0.14 L");
  }

  @Test
  void aLargerRiseIsAntifreeze() {
    List<Finding> found = HandMade.every(1, 3).level(h -> h < 35 ? 150 : 190).found(CHECK);
    assertThat(proposed(found.get(0)).actions()).containsExactly(VisitAction.ANTIFREEZE_ADDED);
  }

  @Test
  void aBareRiseByNightIsNoVisitSinceSnowSlidesIn() {
    assertThat(HandMade.every(1, 3).level(h -> h < 26 ? 150 : 157).found(CHECK)).isEmpty();
  }

  @Test
  void aRattledBucketByDayIsAVisitAndByNightIsnt() {
    HandMade byDay = HandMade.every(1, 3).level(shaken(36));
    HandMade byNight = HandMade.every(1, 3).level(shaken(26));
    assertThat(byDay.found(CHECK)).hasSize(1);
    assertThat(byNight.found(CHECK)).isEmpty();
  }

  @Test
  void oneReadingOfTheWiresBareIsAVisitWhenReadingsAreMinutesApart() {
    DoubleUnaryOperator bare = h -> h >= 36 && h < 36.08 ? 100 : 540;
    assertThat(HandMade.every(5, 3).level(bare).found(CHECK)).hasSize(1);
    assertThat(HandMade.every(1, 3).level(h -> h == 36 ? 100 : 540).found(CHECK)).isEmpty();
  }

  @Test
  void oilPouredSlowlyIntoABucketTouchedByDayIsAVisit() {
    DoubleUnaryOperator poured =
        h -> h < 36 ? 150 : h < 36.03 ? 148.2 : 148.2 + Math.min(14, (h - 36.03) * 140);
    List<Finding> found = HandMade.every(2, 3).level(poured).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(proposed(found.get(0)).actions()).containsExactly(VisitAction.ANTIFREEZE_ADDED);
  }

  private static DoubleUnaryOperator shaken(double from) {
    return h -> 150 + (h >= from && h < from + 0.5 ? 4 * Math.sin(Math.round(h * 60) * 2.3) : 0);
  }

  @Test
  void heavyRainAndSnowThatSlidesInAreNoVisits() {
    DoubleUnaryOperator rain = h -> 150 + 60 * Math.max(0, Math.min(h, 34.3) - 34);
    DoubleUnaryOperator sliding = h -> 150 + 8 * Math.max(0, Math.min(1, (h - 34) * 6));
    assertThat(HandMade.every(1, 3).level(rain).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 3).level(rain).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 3).level(sliding).found(CHECK)).isEmpty();
    assertThat(HandMade.every(60, 9).level(sliding).found(CHECK)).isEmpty();
  }

  @Test
  void rainBesideAVisitStaysOutsideIt() {
    DoubleUnaryOperator level =
        h -> visit(34, 34.5, 120).applyAsDouble(h) + 5 * Math.max(0, Math.min(h, 36) - 35);
    Finding finding = HandMade.every(2, 3).level(level).found(CHECK).get(0);
    assertThat(HandMade.hour(finding.span().toMs())).isLessThan(35);
  }

  @Test
  void aFallAcrossAGapIsAVisitAndARiseIsnt() {
    HandMade fell = HandMade.every(5, 4).level(h -> h < 40 ? 400 : 100);
    HandMade rose = HandMade.every(5, 4).level(h -> h < 40 ? 150 : 190);
    fell.silent(h -> h > 38 && h < 44);
    rose.silent(h -> h > 38 && h < 44);
    assertThat(fell.found(CHECK)).hasSize(1);
    assertThat(rose.found(CHECK)).isEmpty();
  }

  @Test
  void aVisitInTheNotebookIsntRaised() {
    Entry marked =
        new Entry.ServiceVisit(
            HandMade.header("a"),
            HandMade.span(33.5, 35),
            List.of(VisitAction.EMPTIED),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    HandMade season = HandMade.every(2, 3).level(visit(34, 34.5, 120)).entry(marked);
    assertThat(season.found(CHECK)).isEmpty();
  }

  @Test
  void windAndCalmRaiseNothing() {
    assertThat(HandMade.every(1, 3).found(CHECK)).isEmpty();
    assertThat(HandMade.every(1, 3).noise(h -> 1.5).found(CHECK)).isEmpty();
    assertThat(HandMade.every(60, 20).found(CHECK)).isEmpty();
  }

  @Test
  void oneWireOrOneRowTellsNothing() {
    assertThat(HandMade.ofOneWire(2, 3).level(visit(34, 34.5, 120)).found(CHECK)).isEmpty();
    assertThat(HandMade.every(2, 0).found(CHECK)).isEmpty();
    assertThat(HandMade.every(2, 1).level(h -> Double.NaN).found(CHECK)).isEmpty();
  }
}
