package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Calibration;
import org.rimebook.station.Interval;

class CalibrationDoubtCheckTest {

  private static final Check CHECK = new CalibrationDoubtCheck();
  private static final Interval SEASON = HandMade.span(-1 / 6.0, 240 + 1 / 6.0);

  /** Ten events of 5 mm in two hours each, after two dry days. */
  private static double levelMm(double hour) {
    double mm = 150;
    for (int event = 0; event < 10; event++) {
      mm += 2.5 * Math.max(0, Math.min(2, hour - 60 - 12 * event));
    }
    return mm;
  }

  private static HandMade wet() {
    return HandMade.every(10, 10).level(CalibrationDoubtCheckTest::levelMm).noise(hour -> 0);
  }

  @Test
  void aWireThatRisesFivePercentMoreIsDoubtedAndLeftOut() {
    List<Finding> found =
        wet().apart((wire, hour) -> wire == 1 ? 0.05 * (levelMm(hour) - 150) : 0).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.kind()).isEqualTo(FindingKind.CALIBRATION);
    assertThat(finding.wires()).containsExactly("w1");
    assertThat(finding.span()).isEqualTo(SEASON);
    assertThat(finding.reason())
        .contains(
            "over 50 mm of precipitation it rises 5.0 % more",
            "Compare A, B and f0 with the sheet of w1.");
    assertThat(finding.doubted()).contains(SEASON);
    assertThat(finding.proposal())
        .isEqualTo(
            new Entry.BadInterval(
                new Entry.Header("", "", "", "The calibration doesn't suit."),
                SEASON,
                Set.of("w1"),
                BadReason.OTHER));
  }

  @Test
  void onePercentIsWhatTiltMakes() {
    assertThat(wet().apart((w, h) -> w == 1 ? 0.01 * (levelMm(h) - 150) : 0).found(CHECK))
        .isEmpty();
  }

  /** 3 mm and 1.5 % of 150 mm are 5.25 mm. */
  @Test
  void aWireThatStandsApartFromTheStartIsDoubtedButKept() {
    Finding finding = wet().apart((w, h) -> w == 2 ? 12 : 0).found(CHECK).get(0);
    assertThat(finding.wires()).containsExactly("w2");
    assertThat(finding.reason())
        .contains("w2 reads 162.0 mm at the start, the middle wire 150.0 mm");
    assertThat(finding.doubted()).isEmpty();
    assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
    assertThat(wet().apart((w, h) -> w == 2 ? 4 : 0).found(CHECK)).isEmpty();
  }

  @Test
  void depthsNoBucketHasAreTold() {
    Finding below = HandMade.every(10, 10).level(hour -> -10).found(CHECK).get(0);
    assertThat(below.wires()).isEmpty();
    assertThat(below.span()).isEqualTo(SEASON);
    assertThat(below.doubted()).isEmpty();
    assertThat(below.reason())
        .startsWith("The wires read -10.0 mm at the start; an empty bucket reads about 0 mm.");
    Finding above = HandMade.every(10, 10).level(hour -> 1100).found(CHECK).get(0);
    assertThat(above.reason())
        .startsWith("The wires read 1100.0 mm at the start; the bucket holds 1000 mm.");
    assertThat(HandMade.every(10, 10).level(hour -> -3).found(CHECK)).isEmpty();
  }

  /** A/(2 f0 B) is 1/1.25 = 0.80 of what a taut wire has. */
  @Test
  void coefficientsNoTautWireHasAreTold() {
    Calibration odd = new Calibration(Optional.empty(), 0.0172, 1.25 * 0.0172 / 2100, 1050);
    List<Finding> found =
        wet().calibrated(HandMade.taut(1040), odd, HandMade.taut(1060)).found(CHECK);
    assertThat(found)
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.wires()).containsExactly("w1");
              assertThat(finding.reason()).contains("A/(2 f0 B) of w1 is 0.80");
              assertThat(finding.doubted()).isEmpty();
              assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
            });
  }

  @Test
  void coefficientsTenPercentOffAreUsual() {
    Calibration near = new Calibration(Optional.empty(), 0.0172, 1.1 * 0.0172 / 2100, 1050);
    assertThat(wet().calibrated(HandMade.taut(1040), near, HandMade.taut(1060)).found(CHECK))
        .isEmpty();
  }

  @Test
  void wiresThatAgreeRaiseNothing() {
    assertThat(wet().found(CHECK)).isEmpty();
  }

  @Test
  void aWireSomebodyLeftOutIsNotRaised() {
    Entry bad =
        new Entry.BadInterval(
            HandMade.header("a"), HandMade.span(-1, 241), Set.of("w2"), BadReason.OTHER);
    assertThat(wet().apart((w, h) -> w == 2 ? 12 : 0).entry(bad).found(CHECK)).isEmpty();
  }

  @Test
  void oneWireOrOneRowOrNoReadingTellsNothing() {
    assertThat(HandMade.ofOneWire(10, 10).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 0).apart((w, h) -> w == 2 ? 12 : 0).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 10).level(hour -> Double.NaN).found(CHECK)).isEmpty();
    assertThat(wet().withoutChannels().found(CHECK)).isEmpty();
  }
}
