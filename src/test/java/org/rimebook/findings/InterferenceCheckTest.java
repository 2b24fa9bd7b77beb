package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.findings.HandMade.span;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class InterferenceCheckTest {

  private static final Check CHECK = new InterferenceCheck();

  /** From hour 20 to 23 every tenth reading of some wires is 30 mm off. */
  private static HandMade struck(int... wires) {
    List<Integer> which = Arrays.stream(wires).boxed().toList();
    return HandMade.every(1, 3)
        .apart(
            (wire, hour) ->
                which.contains(wire)
                        && hour > 20
                        && hour <= 23
                        && Math.round(hour * 60) % 10 == wire
                    ? 30
                    : 0);
  }

  @Test
  void readingsStruckAgainAndAgainAreOneFinding() {
    List<Finding> found = struck(1).found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.wires()).containsExactly("w1");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(20, within(0.3));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(23, within(0.3));
    assertThat(finding.reason()).contains("18 of", "readings of w1");
    assertThat(proposed(finding).wires()).containsExactly("w1");
  }

  @Test
  void wiresStruckAtTheSameTimeAreNamedTogether() {
    List<Finding> found = struck(0, 1, 2).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).wires()).containsExactlyInAnyOrder("w0", "w1", "w2");
  }

  @Test
  void fewSpikesASoundWireAndWhatIsMarkedAreNot() {
    assertThat(HandMade.every(1, 3).found(CHECK)).isEmpty();
    HandMade few =
        HandMade.every(1, 3)
            .apart((wire, hour) -> wire == 1 && Math.round(hour * 60) % 700 == 0 ? 30 : 0);
    assertThat(few.found(CHECK)).isEmpty();
    assertThat(struck(1).entry(marked(19, 24)).found(CHECK)).isEmpty();
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
