package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.findings.HandMade.span;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class OutOfRangeCheckTest {

  private static final Check CHECK = new OutOfRangeCheck();

  /** Wire 2 shows 1400 mm in a bucket of 1000 mm from hour 10 to 14. */
  private static HandMade beyond() {
    return HandMade.every(5, 2)
        .instead((wire, hour) -> wire == 2 && hour > 10 && hour <= 14 ? 1400 : Double.NaN);
  }

  @Test
  void aWireThatShowsMoreThanTheBucketHoldsIsNamed() {
    List<Finding> found = beyond().found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.wires()).containsExactly("w2");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(10, within(0.1));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(14, within(0.1));
    assertThat(finding.reason()).contains("4 h", "48 readings");
    assertThat(finding.doubted()).as("readings out of range aren't used").isEmpty();
    assertThat(proposed(finding).wires()).containsExactly("w2");
  }

  @Test
  void aSpikeASoundWireAndWhatIsMarkedAreNot() {
    assertThat(HandMade.every(5, 2).found(CHECK)).isEmpty();
    HandMade spike =
        HandMade.every(5, 2)
            .instead((wire, hour) -> wire == 2 && Math.abs(hour - 10) < 0.05 ? 1400 : Double.NaN);
    assertThat(spike.found(CHECK)).isEmpty();
    assertThat(beyond().entry(marked(9, 15)).found(CHECK)).isEmpty();
  }

  @Test
  void ofAWireWhoseCalibrationIsDoubtedNothingMoreIsSaid() {
    Scene scene = beyond().scene();
    Finding doubt =
        Finding.harmless(
            FindingKind.CALIBRATION,
            Finding.Subject.wire(span(0, 48), "w2"),
            "",
            1,
            Proposals.remark(span(0, 48), ""));
    assertThat(CHECK.look(scene.having(List.of(doubt)))).isEmpty();
  }

  private static Entry.BadInterval proposed(Finding finding) {
    assertThat(finding.proposal()).isInstanceOf(Entry.BadInterval.class);
    return (Entry.BadInterval) finding.proposal();
  }

  private static Entry marked(double fromHour, double toHour) {
    return new Entry.BadInterval(
        HandMade.header("n-1"), span(fromHour, toHour), Set.of(), BadReason.OTHER);
  }
}
