package org.rimebook.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.stream.LongStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

class IntervalProperties {

  @Property
  void twoIntervalsOverlapWhenAnInstantLiesInBoth(
      @ForAll @LongRange(min = 0, max = 12) long a,
      @ForAll @LongRange(min = 0, max = 6) long aLength,
      @ForAll @LongRange(min = 0, max = 12) long b,
      @ForAll @LongRange(min = 0, max = 6) long bLength) {
    Interval first = new Interval(a, a + aLength);
    Interval second = new Interval(b, b + bLength);
    boolean shared =
        LongStream.rangeClosed(0, 20).anyMatch(ms -> first.contains(ms) && second.contains(ms));
    assertThat(first.overlaps(second)).isEqualTo(shared).isEqualTo(second.overlaps(first));
  }

  @Property
  void anIntervalHoldsAsManyInstantsAsItIsLong(
      @ForAll @LongRange(min = -9, max = 9) long from,
      @ForAll @LongRange(min = 0, max = 9) long length) {
    Interval interval = new Interval(from, from + length);
    assertThat(LongStream.rangeClosed(-20, 20).filter(interval::contains).count())
        .isEqualTo(interval.lengthMs())
        .isEqualTo(length);
    assertThat(Interval.of(interval.from(), interval.to())).isEqualTo(interval);
  }

  @Example
  void theStartIsInsideAndTheEndIsNot() {
    Interval day =
        Interval.of(Instant.parse("2025-01-01T00:00:00Z"), Instant.parse("2025-01-02T00:00:00Z"));
    assertThat(day.contains(day.fromMs())).isTrue();
    assertThat(day.contains(day.toMs())).isFalse();
    assertThat(day.lengthMs()).isEqualTo(86_400_000);
  }

  @Example
  void anIntervalCannotEndBeforeItStarts() {
    assertThatThrownBy(() -> new Interval(1000, 999))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1970-01-01T00:00:01Z to 1970-01-01T00:00:00.999Z");
  }
}
