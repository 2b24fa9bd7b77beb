package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.ms;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;

class FrozenCheckTest {

  /** Readings jump about by tenths of a millimetre, but for a day and a half from hour 100. */
  private static Bucket still(double share, DoubleUnaryOperator airDegC) {
    return Bucket.every(2, 240)
        .level(
            hour ->
                200 + (hour > 100 && hour < 136 ? share : 1) * 0.2 * Math.sin(12_345.678 * hour))
        .weather(airDegC, 3)
        .noise(0.01);
  }

  @Test
  void wiresThatNoLongerFeelTheWindInDeepColdTellOfIce() {
    assertThat(Raised.in(still(0.1, hour -> -14), FindingKind.FROZEN))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.span().fromMs()).isBetween(ms(97), ms(104));
              assertThat(finding.span().toMs()).isBetween(ms(132), ms(139));
              assertThat(finding.doubted()).isEmpty();
              assertThat(finding.reason()).contains("-14.0 °C");
              assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
            });
  }

  @Test
  void inMildWeatherItIsNoIce() {
    assertThat(Raised.in(still(0.1, hour -> 3), FindingKind.FROZEN)).isEmpty();
  }

  @Test
  void wiresThatGoOnJumpingHangInNoIce() {
    assertThat(Raised.in(still(1, hour -> -14), FindingKind.FROZEN)).isEmpty();
  }
}
