package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.findings.HandMade.span;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class SilentWireCheckTest {

  private static final Check CHECK = new SilentWireCheck();

  /** Wire 1 gives nothing from hour 30 to 50. */
  private static HandMade silent() {
    return HandMade.every(5, 4)
        .apart((wire, hour) -> wire == 1 && hour > 30 && hour <= 50 ? Double.NaN : 0);
  }

  @Test
  void aWireThatGivesNothingWhileOthersDoIsNamedWithItsSpan() {
    List<Finding> found = silent().found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.kind()).isEqualTo(FindingKind.SILENT_WIRE);
    assertThat(finding.wires()).containsExactly("w1");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(30, within(0.1));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(50, within(0.1));
    assertThat(finding.reason()).contains("20 h");
    assertThat(finding.doubted()).as("nothing came through that could spoil a total").isEmpty();
    assertThat(proposed(finding).wires()).containsExactly("w1");
    assertThat(proposed(finding).reason()).isEqualTo(BadReason.WIRE_FAULT);
  }

  @Test
  void whatItJumpsAboutBeforeBelongsToItAndIsDoubted() {
    HandMade jumping =
        silent()
            .instead(
                (wire, hour) ->
                    wire == 1 && hour > 26 && hour <= 30
                        ? 150 + 40 * Math.sin(97 * hour)
                        : Double.NaN);
    Finding finding = jumping.found(CHECK).get(0);
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(26, within(0.5));
    assertThat(finding.reason()).contains("missing or wild");
    assertThat(finding.doubted()).isPresent();
  }

  @Test
  void allWiresSilentWhileTheLoggerWritesAreOneFinding() {
    HandMade all =
        HandMade.every(5, 4).apart((wire, hour) -> hour > 30 && hour <= 33 ? Double.NaN : 0);
    assertThat(all.found(CHECK)).hasSize(1);
    Finding finding = all.found(CHECK).get(0);
    assertThat(finding.wires()).isEmpty();
    assertThat(finding.reason()).contains("3 h");
    assertThat(proposed(finding).reason()).isEqualTo(BadReason.LOGGER);
  }

  @Test
  void soundWiresShortSilencesAndWhatIsMarkedAreNot() {
    assertThat(HandMade.every(5, 4).found(CHECK)).isEmpty();
    HandMade brief =
        HandMade.every(5, 4)
            .apart((w, hour) -> w == 1 && hour > 30 && hour <= 30.5 ? Double.NaN : 0);
    assertThat(brief.found(CHECK)).isEmpty();
    assertThat(silent().entry(marked(29, 51)).found(CHECK)).isEmpty();
  }

  @Test
  void aGaugeThatNeverGaveAFrequencyIsSilentAllAlong() {
    List<Finding> found = HandMade.every(30, 2).apart((wire, hour) -> Double.NaN).found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).span().lengthMs()).isGreaterThan(40 * 3_600_000L);
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
