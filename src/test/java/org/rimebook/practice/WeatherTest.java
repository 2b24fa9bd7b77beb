package org.rimebook.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rimebook.station.Interval;

class WeatherTest {

  private static final StationClock UTC = new StationClock(ZoneOffset.UTC);
  private static final Interval YEARS = UTC.span("2000-01-01T00:00", "2010-01-01T00:00");
  private static final Weather DECADE =
      Weather.simulated(
          Sampling.every(Duration.ofHours(1), YEARS),
          ZoneOffset.UTC,
          new Climate(5, 10, 4, 3, 4),
          3);

  private static double mean(IntToDoubleFunction value) {
    return IntStream.range(0, DECADE.sampling().size()).mapToDouble(value).average().orElseThrow();
  }

  @Test
  void theClimateComesBackAsTheMeanOfTheWeather() {
    assertThat(mean(DECADE::airTemperatureDegC)).isCloseTo(5, within(0.5));
    assertThat(mean(DECADE::windMs)).isCloseTo(4, within(0.3));
    assertThat(mean(DECADE::unsettled)).isCloseTo(0.5, within(0.03));
  }

  @Test
  void stormsComeAboutAsOftenAsAskedAndLastAsLong() {
    StormClimate climate = new StormClimate(3, 6, 1, 0);
    Precipitation fell = Storms.simulated(DECADE, climate, 3);
    double weeks = YEARS.lengthMs() / (7 * 86_400_000.0);
    double wetHours =
        fell.pulses().stream().mapToDouble(p -> p.interval().lengthMs()).sum() / 3_600_000.0;
    assertThat(wetHours / weeks).isBetween(0.7 * 18, 1.1 * 18);
  }

  @Test
  void drizzleFallsAtATwentiethOfAMillimetreAnHourAndLessAsSnow() {
    Precipitation fell = Storms.simulated(DECADE, new StormClimate(3, 6, 1, 1), 3);
    assertThat(fell.pulses())
        .isNotEmpty()
        .allSatisfy(p -> assertThat(p.mm() * 6).isBetween(0.03 - 1e-9, 0.05 + 1e-9));
  }

  @Test
  void theSunIsHighestAtNoonInTheSouth() {
    Sun noon = Sun.at(UTC.at("2024-06-20T12:00").toEpochMilli(), 50, ZoneOffset.UTC);
    assertThat(noon.azimuthDeg()).isCloseTo(180, within(1.0));
    // Elevation at noon of the solstice is 90° − latitude + obliquity.
    assertThat(StrictMath.toDegrees(StrictMath.asin(noon.elevationSine())))
        .isCloseTo(90 - 50 + 23.44, within(0.2));
    Sun morning = Sun.at(UTC.at("2024-06-20T06:00").toEpochMilli(), 50, ZoneOffset.UTC);
    assertThat(morning.azimuthDeg()).isBetween(60.0, 90.0);
  }
}
