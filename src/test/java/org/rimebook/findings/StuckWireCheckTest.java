package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.findings.HandMade.span;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class StuckWireCheckTest {

  private static final Check CHECK = new StuckWireCheck();

  /** Wire 0 shows 150.2 mm from hour 40 to 60. */
  private static HandMade stuck() {
    return HandMade.every(2, 5)
        .instead((wire, hour) -> wire == 0 && hour > 40 && hour <= 60 ? 150.2 : Double.NaN);
  }

  @Test
  void aFrequencyThatStaysIsNamedWithHowLongRunsUsuallyLast() {
    List<Finding> found = stuck().found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.wires()).containsExactly("w0");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(40, within(0.2));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(60, within(0.2));
    assertThat(finding.reason()).contains("20 h", "600 readings", "Usually it changes within");
    assertThat(finding.doubted()).contains(finding.span());
    assertThat(proposed(finding).wires()).containsExactly("w0");
  }

  @Test
  void howFarTheOthersMovedIsTold() {
    Finding finding =
        stuck().level(hour -> 150 + Math.max(0, Math.min(8, hour - 45))).found(CHECK).get(0);
    assertThat(finding.reason()).containsPattern("other wires moved by (7\\.9|8\\.0)\\d mm");
  }

  @Test
  void aCoarseCounterInDryWeatherIsNotStuck() {
    HandMade coarse = HandMade.every(2, 5).instead((wire, hour) -> 150.2);
    assertThat(coarse.found(CHECK)).isEmpty();
  }

  @Test
  void aSoundWireAndWhatIsMarkedAreNot() {
    assertThat(HandMade.every(2, 5).found(CHECK)).isEmpty();
    assertThat(stuck().entry(marked(39, 61)).found(CHECK)).isEmpty();
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
