package org.rimebook.totals;

import java.util.Optional;
import java.util.OptionalDouble;
import org.rimebook.undercatch.Undercatch;

/**
 * The catch of hours adjusted for wind undercatch, as the sum of their two half hours: the catch
 * efficiency holds for intervals of 30 minutes and isn't linear in the wind.
 */
record HourAdjustment(Optional<Undercatch> undercatch, HourCatch[] hours, HalfHourWeather weather) {

  /**
   * The adjusted catch of an hour [mm]; empty when the sheet doesn't settle the adjustment, the
   * hour has no wind or no temperature, a half hour with catch has none, or it isn't known in which
   * half the catch fell. What fell over several hours has no wind of its own.
   */
  OptionalDouble adjustedMm(int h) {
    HourCatch hour = hours[h];
    boolean measured =
        undercatch.isPresent()
            && hour.accumulatedFrom == h
            && hour.halvesKnown
            && weather.hourlyWindMs(h).isPresent()
            && weather.hourlyAirTemperatureC(h).isPresent();
    double sumMm = 0;
    for (int half = 0; half < hour.halfMm.length && measured; half++) {
      if (hour.halfMm[half] > 0) {
        OptionalDouble halfMm = adjustedMm(hour.halfMm[half], 2 * h + half);
        measured = halfMm.isPresent();
        sumMm += halfMm.orElse(0);
      }
    }
    return measured ? OptionalDouble.of(sumMm) : OptionalDouble.empty();
  }

  private OptionalDouble adjustedMm(double catchMm, int half) {
    return undercatch
        .orElseThrow()
        .adjustedMm(
            catchMm,
            weather.windMs(half).orElse(Double.NaN),
            weather.airTemperatureC(half).orElse(Double.NaN),
            weather.snowDepthM(half).orElse(Double.NaN));
  }
}
