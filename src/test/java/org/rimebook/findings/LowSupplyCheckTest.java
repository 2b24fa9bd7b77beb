package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class LowSupplyCheckTest {

  private static final Check CHECK = new LowSupplyCheck();

  private static boolean low(double h) {
    return h > 400 && h < 460;
  }

  private static HandMade season() {
    return HandMade.every(1, 40)
        .supply(h -> 12.4 + Math.max(0, Math.sin((h - 6) * Math.PI / 12)) - (low(h) ? 1.5 : 0));
  }

  @Test
  void aLowSupplyByItselfIsARemark() {
    List<Finding> found = season().found(CHECK);
    assertThat(found).hasSize(1);
    assertThat(HandMade.hour(found.get(0).span().fromMs())).isCloseTo(400, within(6.0));
    assertThat(found.get(0).reason()).contains("10.90 V");
    assertThat(found.get(0).proposal()).isInstanceOf(Entry.Remark.class);
    assertThat(found.get(0).doubted()).isEmpty();
  }

  @Test
  void readingsThatGetNoisyWithItAreProposedBadForPower() {
    Finding finding = season().noise(h -> low(h) ? 1 : 0.03).found(CHECK).get(0);
    assertThat(((Entry.BadInterval) finding.proposal()).reason()).isEqualTo(BadReason.POWER);
    assertThat(finding.reason()).contains("noise of a reading is 1.0", "0.03 mm in the week");
    assertThat(finding.doubted()).isPresent();
  }

  @Test
  void readingsThatGetLostAreTold() {
    Finding finding =
        season().level(h -> low(h) && h % 0.1 < 0.05 ? Double.NaN : 150).found(CHECK).get(0);
    assertThat(finding.reason()).contains("of the readings are lost");
    assertThat(finding.doubted()).isEmpty();
  }

  @Test
  void aSupplyAsEverAndNoSupplyRaiseNothing() {
    assertThat(HandMade.every(10, 40).found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 40).withoutChannels().found(CHECK)).isEmpty();
    assertThat(HandMade.every(10, 3).supply(h -> h > 20 ? 10 : 12).found(CHECK)).isEmpty();
  }
}
