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

class WeatherMismatchCheckTest {

  /** Four millimetres in half an hour at hour 60. */
  private static Bucket rises(DoubleUnaryOperator percent) {
    return Bucket.every(10, 120)
        .level(rain(60, 60.5, 8))
        .noise(0.03)
        .weather(hour -> 2, hour -> 2, hour -> 0.4, percent);
  }

  @Test
  void catchOutOfDryAirIsDoubtful() {
    assertThat(Raised.in(rises(hour -> 38), FindingKind.WEATHER_MISMATCH))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.span().fromMs()).isBetween(ms(59.5), ms(60.5));
              assertThat(finding.span().toMs()).isBetween(ms(60.3), ms(61));
              assertThat(finding.doubted()).contains(finding.span());
              assertThat(finding.reason()).contains("4.0 mm", "38 %");
              assertThat(finding.proposal()).isInstanceOf(Entry.Remark.class);
            });
  }

  @Test
  void catchOutOfMoistAirIsNot() {
    assertThat(Raised.in(rises(hour -> 91), FindingKind.WEATHER_MISMATCH)).isEmpty();
    DoubleUnaryOperator moistInThatHour = hour -> hour > 59 && hour < 61 ? 91 : 40;
    assertThat(Raised.in(rises(moistInThatHour), FindingKind.WEATHER_MISMATCH)).isEmpty();
  }

  @Test
  void aSilentSensorTellsNothing() {
    assertThat(Raised.in(rises(hour -> Double.NaN), FindingKind.WEATHER_MISMATCH)).isEmpty();
  }

  @Test
  void withoutHumidityNothingIsDoubtful() {
    Bucket unknown = Bucket.every(10, 120).level(rain(60, 60.5, 8)).weather(hour -> 2, 2);
    assertThat(Raised.in(unknown, FindingKind.WEATHER_MISMATCH)).isEmpty();
  }

  @Test
  void lateCatchIsNotRaisedAgain() {
    Bucket marked = rises(hour -> 38).entry(new Entry.LateCatch(header("l"), span(40, 62)));
    assertThat(Raised.in(marked, FindingKind.WEATHER_MISMATCH)).isEmpty();
  }
}
