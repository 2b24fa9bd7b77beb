package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rimebook.station.Interval;

class OtherStormsTest {

  private static final StationClock UTC = new StationClock(ZoneOffset.UTC);
  private static final Interval YEARS = UTC.span("2000-01-01T00:00", "2010-01-01T00:00");
  private static final Weather DECADE =
      Weather.simulated(Sampling.every(Duration.ofHours(1), YEARS), ZoneOffset.UTC, Trial.MILD, 3);

  /** Ways to draw storms that owe nothing to the sky. */
  enum Kind {
    CELLS {
      @Override
      Precipitation fell(StormClimate climate, long seed) {
        return CellStorms.simulated(DECADE, climate, seed);
      }
    },
    CASCADE {
      @Override
      Precipitation fell(StormClimate climate, long seed) {
        return CascadeStorms.simulated(DECADE, climate, seed);
      }
    };

    abstract Precipitation fell(StormClimate climate, long seed);
  }

  private static double wetShare(Precipitation fell) {
    long wet = 0;
    long hours = YEARS.lengthMs() / 3_600_000;
    for (long hour = 0; hour < hours; hour++) {
      long from = YEARS.fromMs() + hour * 3_600_000;
      wet += fell.amountMm(new Interval(from, from + 3_600_000)) > 0 ? 1 : 0;
    }
    return (double) wet / hours;
  }

  @ParameterizedTest
  @EnumSource
  void stormsComeAboutAsOftenAsAskedAndLastAsLong(Kind kind) {
    // Three storms of six hours a week are 18 of 168 h; hours are touched at both ends.
    double share = wetShare(kind.fell(new StormClimate(3, 6, 1, 0.1), 3));
    assertThat(share).isBetween(0.7 * 18 / 168, 1.4 * 18 / 168);
  }

  @ParameterizedTest
  @EnumSource
  void twiceTheIntensityIsNearlyTwiceTheWater(Kind kind) {
    double once = kind.fell(new StormClimate(3, 6, 1, 0), 3).amountMm(YEARS);
    double twice = kind.fell(new StormClimate(3, 6, 2, 0), 3).amountMm(YEARS);
    assertThat(twice / once).isCloseTo(1.9, within(0.15));
  }

  @ParameterizedTest
  @EnumSource
  void drizzleStaysBelowATenthOfAMillimetreAnHour(Kind kind) {
    assertThat(kind.fell(new StormClimate(3, 6, 1, 1), 3).pulses())
        .isNotEmpty()
        .allSatisfy(p -> assertThat(p.mm()).isLessThanOrEqualTo(0.1 * hours(p) + 1e-9));
  }

  @ParameterizedTest
  @EnumSource
  void theSameSeedGivesTheSameStormsAndAnotherSeedOthers(Kind kind) {
    StormClimate climate = new StormClimate(3, 6, 1, 0.2);
    assertThat(kind.fell(climate, 4).pulses()).isEqualTo(kind.fell(climate, 4).pulses());
    assertThat(kind.fell(climate, 5).pulses()).isNotEqualTo(kind.fell(climate, 4).pulses());
  }

  @Test
  void aCascadeHasDryMinutesInsideItsStorms() {
    List<Pulse> pulses = Kind.CASCADE.fell(new StormClimate(3, 6, 1, 0), 3).pulses();
    long breaks = 0;
    for (int i = 1; i < pulses.size(); i++) {
      long pauseMs = pulses.get(i).interval().fromMs() - pulses.get(i - 1).interval().toMs();
      breaks += pauseMs > 0 && pauseMs < 1_800_000 ? 1 : 0;
    }
    assertThat(breaks).isGreaterThan(1000);
  }

  private static double hours(Pulse pulse) {
    return pulse.interval().lengthMs() / 3_600_000.0;
  }
}
