package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.fixture.Bucket;

class HalfHourProperties {

  @Property(tries = 40)
  void theHalvesOfAnHourAddUpToIt(
      @ForAll @DoubleRange(min = 1, max = 20) double from,
      @ForAll @DoubleRange(min = 0.02, max = 8) double rate,
      @ForAll @DoubleRange(min = 0, max = 24) double silentFrom,
      @ForAll @DoubleRange(min = 0.1, max = 4) double silence,
      @ForAll @IntRange(min = 1, max = 25) int minutes) {
    CatchSeries series =
        Bucket.every(minutes, 36)
            .noise(0.03)
            .level(Bucket.rain(from, from + 6, rate))
            .silent(silentFrom, silentFrom + silence)
            .result()
            .series();
    int known = 0;
    for (HourCatch hour : HourlyCatch.of(series, Bucket.span(0, 37), 60_000L * minutes)) {
      if (hour.halvesKnown && hour.accumulatedFrom == hour.accumulatedTo) {
        assertThat(hour.halfMm[0] + hour.halfMm[1]).isCloseTo(hour.catchMm, within(1e-9));
        assertThat(Math.min(hour.halfMm[0], hour.halfMm[1])).isNotNegative();
        known++;
      }
    }
    assertThat(known).isGreaterThan(20);
  }
}
