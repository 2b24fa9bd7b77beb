package org.rimebook.practice.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rimebook.practice.published.HourGrid;
import org.rimebook.station.Interval;
import org.rimebook.totals.Quality;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.TotalRow;

class SpansTest {

  private static final long HOUR_MS = 3_600_000;

  /** Hour 0 has a total; hours 1 to 3 have one together; hour 4 has none. */
  private static final Spans SPANS =
      Spans.of(
          List.of(
              row(0, OptionalLong.of(12), OptionalLong.empty()),
              row(1, OptionalLong.empty(), OptionalLong.empty()),
              row(2, OptionalLong.empty(), OptionalLong.empty()),
              row(3, OptionalLong.of(250), OptionalLong.of(HOUR_MS)),
              row(4, OptionalLong.empty(), OptionalLong.empty())));

  private static TotalRow row(int hour, OptionalLong units, OptionalLong since) {
    return new TotalRow(
        new Interval(hour * HOUR_MS, (hour + 1) * HOUR_MS),
        units,
        units.isPresent() ? OptionalDouble.of(0.02) : OptionalDouble.empty(),
        units.isPresent() ? Quality.GOOD : Quality.MISSING,
        1,
        List.of(),
        since,
        OptionalLong.empty(),
        Optional.empty(),
        Set.of());
  }

  @Test
  void hoursWithACommonTotalAreOneSpan() {
    assertThat(SPANS.printedMm(Resolution.HUNDREDTH)).containsExactly(0.12, 2.5);
    assertThat(SPANS.uncertaintyMm()).containsExactly(0.02, 0.02);
    assertThat(SPANS.coveredMs()).isEqualTo(4 * HOUR_MS);
  }

  @Test
  void othersAreSummedOverTheSameSpansAndNotJudgedWhereThereIsNone() {
    double[] hourly = {1, 2, 4, 8, 100};
    assertThat(SPANS.sumsMm(hourly, new HourGrid(0, 5))).containsExactly(1, 14);
  }
}
