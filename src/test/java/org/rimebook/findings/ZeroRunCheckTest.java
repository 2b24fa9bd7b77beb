package org.rimebook.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.rain;
import static org.rimebook.fixture.Bucket.span;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.Entry;

class ZeroRunCheckTest {

  /** Twelve centimetres of snow from hour 50 to 60. */
  private static final DoubleUnaryOperator SNOW_M =
      hour -> 0.3 + 0.012 * Math.max(0, Math.min(10, hour - 50));

  private static Bucket snowed(DoubleUnaryOperator airDegC) {
    return Bucket.every(10, 120)
        .level(rain(10, 20, 1))
        .noise(0.03)
        .weather(airDegC, hour -> 2, SNOW_M);
  }

  @Test
  void snowOnTheGroundAndNoneInTheGaugeIsDoubtful() {
    assertThat(Raised.in(snowed(hour -> -6), FindingKind.ZERO_RUN))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.span().fromMs()).isBetween(ms(18), ms(22));
              assertThat(finding.span().toMs()).isBetween(ms(118), ms(121));
              assertThat(finding.doubted())
                  .hasValueSatisfying(
                      doubted -> {
                        assertThat(doubted.fromMs()).isBetween(ms(48), ms(51));
                        assertThat(doubted.toMs()).isBetween(ms(59), ms(63));
                      });
              assertThat(finding.reason()).contains("grew by 12 cm", "-6.0 °C");
              assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
            });
  }

  @Test
  void aSensorThatRisesInWarmAirTellsOfNoSnow() {
    assertThat(Raised.in(snowed(hour -> 6), FindingKind.ZERO_RUN)).isEmpty();
  }

  @Test
  void withoutSnowDepthNothingIsDoubtful() {
    Bucket unknown =
        Bucket.every(10, 120).level(rain(10, 20, 1)).noise(0.03).weather(hour -> -6, 2);
    assertThat(Raised.in(unknown, FindingKind.ZERO_RUN)).isEmpty();
  }

  @Test
  void snowThatWasCaughtIsNotMissing() {
    Bucket caught =
        Bucket.every(10, 120)
            .level(rain(50, 60, 1.2))
            .noise(0.03)
            .weather(hour -> -6, hour -> 2, SNOW_M);
    assertThat(Raised.in(caught, FindingKind.ZERO_RUN)).isEmpty();
  }

  @Test
  void whatWasEstimatedIsNotRaisedAgain() {
    Bucket marked =
        snowed(hour -> -6)
            .entry(new Entry.Estimate(header("e"), span(48, 62), 11, "neighbour's gauge"));
    assertThat(Raised.in(marked, FindingKind.ZERO_RUN)).isEmpty();
  }
}
