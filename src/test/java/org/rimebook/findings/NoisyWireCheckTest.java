package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.findings.HandMade.span;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class NoisyWireCheckTest {

  private static final Check CHECK = new NoisyWireCheck();

  /** Scatter of one standard deviation that no other wire has. */
  private static double scatter(double hour) {
    return new Random(Math.round(60 * hour) * 7919).nextGaussian();
  }

  /** From hour 100 to 130 wire 1 scatters by some 0.3 mm more than 0.03 mm. */
  private static HandMade noisy() {
    return HandMade.every(1, 8)
        .apart((wire, hour) -> wire == 1 && hour > 100 && hour <= 130 ? 0.3 * scatter(hour) : 0);
  }

  @Test
  void aWireThatScattersMoreThanBesideTheOthersUsualIsNamed() {
    List<Finding> found = noisy().found(CHECK);
    assertThat(found).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.wires()).containsExactly("w1");
    assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(100, within(3.0));
    assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(130, within(3.0));
    assertThat(finding.reason()).contains("they scatter by 0.03 mm");
    assertThat(finding.doubted()).contains(finding.span());
    assertThat(proposed(finding).reason()).isEqualTo(BadReason.NOISE);
    assertThat(proposed(finding).wires()).containsExactly("w1");
  }

  @Test
  void windThatShakesAllIsNotOneWiresNoise() {
    HandMade windy = HandMade.every(1, 8).noise(hour -> hour > 100 && hour <= 130 ? 0.3 : 0.03);
    assertThat(windy.found(CHECK)).isEmpty();
  }

  @Test
  void aSoundWireAndWhatIsMarkedAreNot() {
    assertThat(HandMade.every(1, 8).found(CHECK)).isEmpty();
    assertThat(noisy().entry(marked(99, 131)).found(CHECK)).isEmpty();
    assertThat(HandMade.ofOneWire(1, 8).found(CHECK)).isEmpty();
  }

  /** Of 192 hours 34 are five times as noisy and 34 hardly more than twice. */
  @Test
  void whatIsLeftOutAsNoiseStillTellsWhatIsUsual() {
    HandMade often =
        HandMade.every(1, 8)
            .apart(
                (wire, hour) -> {
                  double times = hour > 20 && hour <= 54 ? 5 : hour > 80 && hour <= 114 ? 2.1 : 0;
                  return wire == 1 ? 0.03 * times * scatter(hour) : 0;
                });
    List<Finding> found = often.found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(HandMade.hour(found.get(0).span().fromMs())).isCloseTo(20, within(3.0));
    assertThat(often.entry(found.get(0).proposal()).found(CHECK)).isEmpty();
  }

  @Test
  void aTimeThatIsNowMoreNowLessNoisyIsOne() {
    HandMade wavering =
        HandMade.every(1, 8)
            .apart(
                (wire, hour) ->
                    wire == 1 && hour > 100 && hour <= 140
                        ? (hour % 16 < 8 ? 0.2 : 0.07) * scatter(hour)
                        : 0);
    assertThat(wavering.found(CHECK))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(HandMade.hour(finding.span().fromMs())).isCloseTo(100, within(4.0));
              assertThat(HandMade.hour(finding.span().toMs())).isCloseTo(140, within(4.0));
            });
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
