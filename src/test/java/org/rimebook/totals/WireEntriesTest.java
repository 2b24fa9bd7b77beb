package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rimebook.fixture.Bucket.header;
import static org.rimebook.fixture.Bucket.ms;
import static org.rimebook.fixture.Bucket.rain;
import static org.rimebook.fixture.Bucket.span;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.fixture.Bucket;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;

class WireEntriesTest {

  private static Entry bad(double from, double to, String... wires) {
    return new Entry.BadInterval(header("b"), span(from, to), Set.of(wires), BadReason.WIRE_FAULT);
  }

  private static Bucket rainy() {
    return Bucket.every(10, 24).level(rain(3, 8, 1)).noise(0.02);
  }

  @Test
  void aWireLeftOutIsNotNamed() {
    TotalRow hour = rainy().entry(bad(5, 7, "w1")).totals().hourly().get(5);
    assertThat(hour.wires()).containsExactly("w0", "w2");
    assertThat(hour.quality()).isEqualTo(Quality.GOOD);
    assertThat(hour.reasons()).contains(Reason.BAD_INTERVAL, Reason.WIRE_MISSING);
    assertThat(hour.completeness()).isCloseTo(1, within(1e-9));
    assertThat(hour.catchUnits().orElseThrow() / 100.0).isCloseTo(1, within(0.1));
  }

  @Test
  void oneWireAloneIsUnchecked() {
    TotalRow hour = rainy().entry(bad(4, 9, "w1", "w0")).totals().hourly().get(6);
    assertThat(hour.wires()).containsExactly("w2");
    assertThat(hour.quality()).isEqualTo(Quality.UNCHECKED);
    assertThat(hour.reasons()).contains(Reason.ONE_WIRE);
  }

  @Test
  void allWiresLeftOutIsAGap() {
    Totals totals = rainy().entry(bad(4, 7)).totals();
    assertThat(totals.hourly().get(5).quality()).isEqualTo(Quality.MISSING);
    assertThat(totals.hourly().get(6).accumulatedSinceMs()).hasValue(ms(4));
    assertThat(totals.hourly().get(5).completeness()).isEqualTo(0);
    assertThat(totals.daily().get(0).catchUnits().orElseThrow() / 100.0).isCloseTo(5, within(0.1));
  }

  @Test
  void aWithdrawnEntryHasNoEffect() {
    Totals with = rainy().totals();
    Totals withdrawn =
        rainy().entry(bad(4, 7)).entry(new Entry.Withdrawal(header("w"), "b")).totals();
    assertThat(withdrawn).isEqualTo(with);
  }

  @Test
  void anEntryAboutAWireTheGaugeDoesNotHaveChangesNothing() {
    assertThat(rainy().entry(bad(4, 7, "w9")).totals()).isEqualTo(rainy().totals());
  }

  @Test
  void wiresThatDisagreeAreSuspectAndTheTotalStands() {
    Totals totals = rainy().pull(1, 12.5, 6).totals();
    TotalRow hour = totals.hourly().get(12);
    assertThat(hour.quality()).isEqualTo(Quality.SUSPECT);
    assertThat(hour.reasons()).contains(Reason.WIRES_DISAGREE);
    assertThat(hour.catchUnits().orElseThrow() / 100.0).isCloseTo(2, within(0.1));
    assertThat(hour.uncertaintyMm().orElseThrow()).isGreaterThan(1);
    assertThat(totals.daily().get(0).quality()).isEqualTo(Quality.SUSPECT);
  }
}
