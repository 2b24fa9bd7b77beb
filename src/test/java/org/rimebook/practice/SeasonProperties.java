package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.rimebook.depth.CalibrationCurve;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;

class SeasonProperties {

  private static final Interval CAPPED = Trial.CLOCK.span("2024-02-27T05:00", "2024-02-28T13:00");
  private static final Interval EMPTIED = Trial.CLOCK.span("2024-03-01T09:20", "2024-03-01T10:05");
  private static final Interval TOPPED = Trial.CLOCK.span("2024-03-03T09:20", "2024-03-03T10:05");

  @Property(tries = 40)
  void noWaterIsMadeOrLost(@ForAll long seed) {
    Truth truth = troubled(seed).truth();
    double entered = truth.catchMm(Trial.TEN_DAYS);
    assertThat(truth.finalMm())
        .isCloseTo(
            truth.chargeMm()
                + entered
                + truth.pouredMm()
                - truth.evaporatedMm()
                - truth.removedMm(),
            within(1e-9));
    assertThat(truth.evaporatedMm()).isPositive();
    assertThat(truth.fell().amountMm(Trial.TEN_DAYS)).isCloseTo(entered, within(1e-9));
  }

  @Property(tries = 15)
  void withoutNoiseEveryWireShowsTheBucketsLevel(
      @ForAll long seed, @ForAll("steps") Duration step) {
    Weather weather = Trial.weather(step, seed);
    StationSheet sheet = Trial.sheet();
    SimulatedSeason season =
        new SeasonBuilder(sheet, weather, seed)
            .fell(Storms.simulated(weather, Trial.WET, seed))
            .charge(120)
            .build();
    for (int i = 0; i < season.sampling().size(); i++) {
      long stampMs = season.sampling().stampMs(i);
      double levelMm = 120 + season.truth().caught().accumulatedMm(stampMs);
      for (int wire = 0; wire < 3; wire++) {
        CalibrationCurve curve =
            CalibrationCurve.of(sheet.wires().get(wire).calibrationAt(stampMs));
        assertThat(curve.depthMm(season.frequencyHz(wire, i))).isCloseTo(levelMm, within(1e-9));
      }
    }
  }

  @Property(tries = 15)
  void theSameSeedGivesTheSameSeasonAndAnotherSeedAnother(@ForAll long seed) {
    SimulatedSeason first = troubled(seed);
    SimulatedSeason again = troubled(seed);
    SimulatedSeason other = troubled(seed + 1);
    int differing = 0;
    for (int i = 0; i < first.sampling().size(); i++) {
      assertThat(again.frequencyHz(1, i)).isEqualTo(first.frequencyHz(1, i));
      differing += other.frequencyHz(1, i) != first.frequencyHz(1, i) ? 1 : 0;
    }
    assertThat(differing).isGreaterThan(first.sampling().size() / 2);
  }

  @Provide
  Arbitrary<Duration> steps() {
    return Arbitraries.of(1, 5, 10, 15, 30, 60).map(Duration::ofMinutes);
  }

  private static SimulatedSeason troubled(long seed) {
    Weather weather = Trial.weather(Duration.ofMinutes(15), seed);
    return new SeasonBuilder(Trial.sheet(), weather, seed)
        .fell(Storms.simulated(weather, Trial.WET, seed))
        .charge(120)
        .cap(new Cap(CAPPED, Duration.ofMinutes(30)))
        .visit(new Visit(EMPTIED, true, 90))
        .visit(new Visit(TOPPED, false, 5))
        .evaporation(new Evaporation(Trial.TEN_DAYS, 0.5))
        .depth(new WindNoise(0.02, 0.2, 0.4, 300_000))
        .build();
  }
}
