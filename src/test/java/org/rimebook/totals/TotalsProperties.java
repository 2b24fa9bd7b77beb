package org.rimebook.totals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.rimebook.fixture.Bucket;

class TotalsProperties {

  private static final double HOURS = 96;

  private static Bucket storm(double from, double lasts, double rate) {
    return Bucket.every(10, HOURS)
        .noise(0.03)
        .level(Bucket.rain(from, from + lasts, rate, 70, 80, 0.3));
  }

  private static long units(List<TotalRow> rows) {
    return rows.stream().mapToLong(r -> r.catchUnits().orElse(0)).sum();
  }

  @Property(tries = 40)
  void printedHoursAddUpToPrintedDaysAndTheSeason(
      @ForAll @DoubleRange(min = 1, max = 40) double from,
      @ForAll @DoubleRange(min = 0.1, max = 30) double lasts,
      @ForAll @DoubleRange(min = 0.02, max = 8) double rate,
      @ForAll @IntRange(min = 0, max = 60) int gapFrom,
      @ForAll @IntRange(min = 1, max = 30) int gapHours) {
    for (Resolution resolution : Resolution.values()) {
      Totals totals =
          storm(from, lasts, rate).silent(gapFrom, gapFrom + gapHours).result().totals(resolution);
      assertThat(units(totals.daily())).isEqualTo(units(totals.hourly()));
      assertThat(totals.seasonUnits()).hasValue(units(totals.daily()));
      for (TotalRow day : totals.daily()) {
        if (day.catchUnits().isPresent()) {
          long since = day.accumulatedSinceMs().orElse(day.interval().fromMs());
          Stream<TotalRow> hours =
              totals.hourly().stream()
                  .filter(h -> h.interval().fromMs() >= since)
                  .filter(h -> h.interval().toMs() <= day.interval().toMs());
          assertThat(day.catchUnits()).hasValue(units(hours.toList()));
        }
      }
    }
  }

  @Property(tries = 25)
  void aGapNeitherCreatesNorLosesCatch(
      @ForAll @DoubleRange(min = 1, max = 40) double from,
      @ForAll @DoubleRange(min = 0.1, max = 30) double lasts,
      @ForAll @DoubleRange(min = 0.02, max = 8) double rate,
      @ForAll @IntRange(min = 1, max = 60) int gapFrom,
      @ForAll @IntRange(min = 1, max = 30) int gapHours) {
    double whole = storm(from, lasts, rate).totals().seasonUnits().orElseThrow() / 100.0;
    double holed =
        storm(from, lasts, rate)
                .silent(gapFrom, gapFrom + gapHours)
                .totals()
                .seasonUnits()
                .orElseThrow()
            / 100.0;
    assertThat(holed).isCloseTo(whole, within(0.15));
  }

  @Property(tries = 15)
  void theOrderOfTheWiresChangesNothing(
      @ForAll @DoubleRange(min = 1, max = 40) double from,
      @ForAll @DoubleRange(min = 0.1, max = 20) double lasts,
      @ForAll @DoubleRange(min = 0.02, max = 8) double rate) {
    List<Long> first = catches(storm(from, lasts, rate));
    assertThat(catches(storm(from, lasts, rate).wires(2, 0, 1))).isEqualTo(first);
    assertThat(catches(storm(from, lasts, rate).wires(1, 0, 2))).isEqualTo(first);
  }

  @Property(tries = 15)
  void aConstantLoadChangesNothing(
      @ForAll @DoubleRange(min = -100, max = 250) double loadMm,
      @ForAll @DoubleRange(min = 0.02, max = 8) double rate) {
    Totals without = storm(10, 12, rate).totals();
    Totals with =
        Bucket.every(10, HOURS)
            .noise(0.03)
            .level(hour -> loadMm + Bucket.rain(10, 22, rate, 70, 80, 0.3).applyAsDouble(hour))
            .totals();
    for (int h = 0; h < without.hourly().size(); h++) {
      assertThat(with.hourly().get(h).catchUnits().orElseThrow())
          .isCloseTo(without.hourly().get(h).catchUnits().orElseThrow(), within(1L));
    }
  }

  private static List<Long> catches(Bucket bucket) {
    return bucket.totals().hourly().stream().map(h -> h.catchUnits().orElse(-1)).toList();
  }
}
