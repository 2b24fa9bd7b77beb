package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.findings.HandMade.span;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class DriftingWireCheckTest {

  private static final Check CHECK = new DriftingWireCheck();

  private static double crept(double hour, double mmPerDay) {
    return mmPerDay * Math.max(0, Math.min(20, hour / 24 - 15));
  }

  /** Wire 2 creeps by 0.2 mm a day from day 15 to 35 and is set right then. */
  private static HandMade creeping() {
    return HandMade.every(10, 50)
        .apart((wire, hour) -> wire == 2 && hour < 35 * 24 ? crept(hour, 0.2) : 0);
  }

  @Test
  void aWireThatCreepsFromTheOthersIsNamedWithItsRate() {
    List<Finding> found = creeping().found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.wires()).containsExactly("w2");
    assertThat(HandMade.hour(finding.span().fromMs()) / 24).isCloseTo(15, within(1.5));
    assertThat(HandMade.hour(finding.span().toMs()) / 24).isCloseTo(35, within(1.5));
    assertThat(finding.reason())
        .containsPattern("\\+(3\\.[89]|4\\.[01])\\d mm")
        .containsPattern("\\+0\\.(19|20)\\d mm/d");
    assertThat(finding.doubted()).isPresent();
    assertThat(proposed(finding).wires()).containsExactly("w2");
  }

  @Test
  void aZeroThatShiftsIsTold() {
    List<Finding> found =
        HandMade.every(10, 30)
            .apart((wire, hour) -> wire == 0 && hour > 360 ? -1.5 : 0)
            .found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).wires()).containsExactly("w0");
    assertThat(found.get(0).reason()).contains("shifts", "-1.50 mm");
    assertThat(found.get(0).span().fromMs()).isLessThan(HandMade.ms(361));
    assertThat(found.get(0).span().toMs()).isGreaterThan(HandMade.ms(359));
  }

  @Test
  void catchAndSoundWiresAndWhatIsMarkedDoNot() {
    HandMade wet = HandMade.every(10, 50).level(hour -> 150 + crept(hour, 8));
    assertThat(wet.found(CHECK)).isEmpty();
    Entry bad =
        new Entry.BadInterval(
            HandMade.header("n-1"), span(14 * 24, 36 * 24), Set.of("w2"), BadReason.WIRE_FAULT);
    assertThat(creeping().entry(bad).found(CHECK)).isEmpty();
    assertThat(creeping().entry(marked(14 * 24, 36 * 24)).found(CHECK)).isEmpty();
  }

  @Test
  void oneWireHasNothingToBeComparedWith() {
    assertThat(HandMade.ofOneWire(10, 50).apart((w, hour) -> crept(hour, 0.2)).found(CHECK))
        .isEmpty();
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
