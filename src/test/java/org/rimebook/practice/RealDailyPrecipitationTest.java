package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.station.Interval;

class RealDailyPrecipitationTest {

  private static final long DAY_MS = 86_400_000L;

  @Test
  void theWinterHoldsEveryDayAndItsAmount() throws IOException {
    SortedMap<LocalDate, Double> days = RealDailyPrecipitation.amountsMm();
    assertThat(days).hasSize(31 + 30 + 31 + 31 + 28 + 31);
    // Summed apart from this code, with awk over the file.
    assertThat(days.values().stream().mapToDouble(mm -> mm).sum()).isCloseTo(770.5, within(1e-6));
  }

  @Test
  void whatTheGaugeCatchesInADayIsTheDaysAmount() throws IOException {
    SimulatedSeason season = RealDailyPrecipitation.season(5).season();
    long dayMs = season.sampling().span().fromMs();
    for (double amountMm : List.copyOf(RealDailyPrecipitation.amountsMm().values())) {
      Interval day = new Interval(dayMs, dayMs + DAY_MS);
      assertThat(season.truth().catchMm(day)).isCloseTo(amountMm, within(1e-9));
      dayMs += DAY_MS;
    }
    assertThat(dayMs).isEqualTo(season.sampling().span().toMs());
  }

  @Test
  void theBucketNeverHoldsMoreThanItsCapacity() throws IOException {
    SimulatedSeason season = RealDailyPrecipitation.season(5).season();
    CalibrationCurve curve =
        CalibrationCurve.of(season.sheet().wires().get(0).calibrations().get(0));
    double capacityMm = season.sheet().gauge().capacityMm().orElseThrow();
    for (int i = 0; i < season.sampling().size(); i++) {
      assertThat(curve.depthMm(season.frequencyHz(0, i))).isLessThan(capacityMm);
    }
  }
}
