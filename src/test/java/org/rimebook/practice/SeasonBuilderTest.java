package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;

class SeasonBuilderTest {

  private static final Interval GAP = Trial.CLOCK.span("2024-02-28T06:00", "2024-02-28T12:00");

  private static double levelMm(SimulatedSeason season, int index) {
    StationSheet sheet = season.sheet();
    return IntStream.range(0, 3)
        .mapToDouble(
            wire ->
                CalibrationCurve.of(sheet.wires().get(wire).calibrations().get(0))
                    .depthMm(season.frequencyHz(wire, index)))
        .average()
        .orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.6, 30})
  void aConstantRateRisesEvenlyFromOneSecondToTheNext(double mmPerHour) {
    Interval hour = Trial.CLOCK.span("2024-07-01T14:00", "2024-07-01T15:00");
    Weather weather =
        Weather.simulated(
            Sampling.every(Duration.ofSeconds(1), hour), Trial.CLOCK.offset(), Trial.MILD, 4);
    SimulatedSeason season =
        new SeasonBuilder(Trial.sheet(), weather, 4)
            .fell(Precipitation.of(List.of(Pulse.atRate(hour, mmPerHour))))
            .charge(100)
            .build();
    assertThat(season.sampling().size()).isEqualTo(3600);
    for (int i = 0; i < 3600; i++) {
      assertThat(levelMm(season, i)).isCloseTo(100 + mmPerHour * (i + 1) / 3600, within(1e-9));
    }
  }

  @Test
  void readingsStopInAPowerFailureAndTheSupplySagsBeforeIt() {
    SimulatedSeason season =
        new SeasonBuilder(Trial.sheet(), Trial.weather(), 1).powerFailure(GAP).build();
    for (int i = 0; i < season.sampling().size(); i++) {
      long stampMs = season.sampling().stampMs(i);
      assertThat(season.logged(i)).isEqualTo(!GAP.contains(stampMs));
    }
    int last = season.sampling().indexAt(GAP.fromMs());
    int dayBefore = last - 144;
    assertThat(season.channelValue(Channel.SUPPLY_VOLTAGE, last - 1))
        .isLessThan(season.channelValue(Channel.SUPPLY_VOLTAGE, dayBefore) - 0.5);
  }

  @Test
  void aSlowerProgramKeepsEveryNthStamp() {
    SimulatedSeason season =
        new SeasonBuilder(Trial.sheet(), Trial.weather(), 1).loggedEvery(6, Trial.TEN_DAYS).build();
    for (int i = 0; i < season.sampling().size(); i++) {
      long sinceStartMs = season.sampling().stampMs(i) - Trial.TEN_DAYS.fromMs();
      assertThat(season.logged(i)).isEqualTo(sinceStartMs % 3_600_000L == 0);
    }
  }

  @Test
  void aSensorGivesNothingDuringItsOutageAndTheOthersGoOn() {
    SimulatedSeason season =
        new SeasonBuilder(Trial.sheet(), Trial.weather(), 1)
            .outage(Channel.WIND_SPEED, GAP)
            .build();
    int inside = season.sampling().indexAt(GAP.fromMs()) + 3;
    assertThat(season.channelValue(Channel.WIND_SPEED, inside)).isNaN();
    assertThat(season.channelValue(Channel.AIR_TEMPERATURE, inside)).isNotNaN();
    assertThat(season.channelValue(Channel.WIND_SPEED, inside + 100)).isNotNaN();
  }

  @Test
  void theWiresCarryNothingWhileTheBucketIsOff() {
    Interval visit = Trial.CLOCK.span("2024-03-01T09:00", "2024-03-01T12:00");
    SimulatedSeason season =
        new SeasonBuilder(Trial.sheet(), Trial.weather(), 1)
            .charge(200)
            .visit(new Visit(visit, true, Visit.depthMm(3, InventedGauge.ORIFICE_AREA_CM2)))
            .build();
    int off = season.sampling().indexAt(visit.fromMs() + 90 * 60_000L);
    assertThat(levelMm(season, off - 9)).isCloseTo(200, within(1e-9));
    assertThat(levelMm(season, off)).isCloseTo(0, within(1e-9));
    assertThat(levelMm(season, off + 9)).isCloseTo(150, within(1e-9));
  }
}
