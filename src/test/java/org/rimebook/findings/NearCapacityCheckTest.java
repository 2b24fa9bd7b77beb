package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

/** The bucket holds 1000 mm. */
class NearCapacityCheckTest {

  private static final Check CHECK = new NearCapacityCheck();

  private static HandMade filled(double mm) {
    return HandMade.every(10, 4).level(hour -> hour < 40 ? 700 : mm);
  }

  @Test
  void aBucketAbove90PercentIsNearlyFullFromThenOn() {
    List<Finding> found = filled(950).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.kind()).isEqualTo(FindingKind.NEAR_CAPACITY);
    assertThat(finding.wires()).isEmpty();
    assertThat(finding.reason())
        .isEqualTo("The level came up to 950 mm, 95 % of the 1000 mm the bucket holds.");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(40, within(0.2));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(96, within(0.2));
    assertThat(finding.doubted()).isEmpty();
    assertThat(finding.proposal())
        .isInstanceOfSatisfying(
            Entry.Remark.class, remark -> assertThat(remark.about()).contains(finding.span()));
  }

  @Test
  void aBucketBelow90PercentHasRoom() {
    assertThat(filled(880).found(CHECK)).isEmpty();
  }

  /**
   * From the first hour's middle to the last one's are 14 days less an hour, of which 20 mm a day
   * make 279.2 mm; over 14 days that is 19.9 mm a day, and a week of it more than the 130 mm left.
   */
  @Test
  void aBucketThatWillBeFullWithinAWeekIsToldInItsLastDay() {
    List<Finding> found = HandMade.every(10, 14).level(hour -> 590 + 20 * hour / 24).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.reason())
        .contains("came up to 870 mm, 87 %", "At 19.9 mm a day it is full within a week.");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(13 * 24, within(0.2));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(14 * 24, within(0.2));
  }

  @Test
  void aBucketThatFillsHalfAsFastOrWasWatchedForAFewDaysIsNot() {
    assertThat(HandMade.every(10, 14).level(hour -> 730 + 10 * hour / 24).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 7).level(hour -> 730 + 20 * hour / 24).found(CHECK)).isEmpty();
  }

  @Test
  void readingsOfNoWireCountWhereSomebodySaidSo() {
    Entry bad =
        new Entry.BadInterval(
            HandMade.header("a"), HandMade.span(39.5, 97), Set.of(), BadReason.OTHER);
    assertThat(filled(950).entry(bad).found(CHECK)).isEmpty();
  }

  @Test
  void aBucketThatOverflowsIsNotToldAgain() {
    Scene scene = filled(950).scene();
    Finding overflow =
        Finding.harmless(
            FindingKind.OVERFLOW,
            Finding.Subject.bucket(HandMade.span(60, 90)),
            "Full.",
            1,
            Proposals.remark(HandMade.span(60, 90), ""));
    assertThat(CHECK.look(scene.having(List.of(overflow)))).isEmpty();
  }

  @Test
  void oneWireTellsItToo() {
    assertThat(HandMade.ofOneWire(10, 4).level(hour -> 950).found(CHECK)).hasSize(1);
  }

  @Test
  void oneRowOrNoReadingTellsNothing() {
    assertThat(HandMade.every(10, 0).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 4).level(hour -> Double.NaN).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 4).withoutChannels().found(CHECK)).isEmpty();
  }
}
