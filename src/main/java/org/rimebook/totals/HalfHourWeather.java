package org.rimebook.totals;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.rimebook.record.Column;
import org.rimebook.station.Interval;
import org.rimebook.undercatch.Weather;

/**
 * Mean weather of consecutive half hours. A reading stands for the sampling interval its stamp
 * closes, an hour at most; impossible readings are left out.
 */
final class HalfHourWeather {

  private static final long HALF_MS = Clock.HOUR_MS / 2;

  /** How long a depth of snow holds when its sensor falls silent: a day, our own choice. */
  private static final int SNOW_HOLDS = (int) (Clock.DAY_MS / HALF_MS);

  private final Interval span;
  private final Map<Weather, Means> means = new EnumMap<>(Weather.class);

  /**
   * @param evidence the sheet's channels and the record's columns
   * @param span whole hours; the first half hour starts at its start
   */
  HalfHourWeather(Evidence evidence, Interval span) {
    this.span = span;
    for (Weather quantity : Weather.values()) {
      evidence
          .sheet()
          .channelIndex(quantity.quantity())
          .map(evidence.record()::channel)
          .ifPresent(column -> means.put(quantity, new Means(quantity, column)));
    }
  }

  /** Takes a row of the record that closes an interval. */
  void add(int row, long fromMs, long toMs) {
    long from = Math.max(span.fromMs(), Math.max(fromMs, toMs - Clock.HOUR_MS));
    long to = Math.min(span.toMs(), toMs);
    if (from < to) {
      means.values().forEach(mean -> mean.add(row, from, to));
    }
  }

  /** Mean wind speed at its sensor in a half hour [m/s]. */
  OptionalDouble windMs(int half) {
    return mean(Weather.WIND, half, half);
  }

  /** Mean air temperature of a half hour [°C]. */
  OptionalDouble airTemperatureC(int half) {
    return mean(Weather.AIR_TEMPERATURE, half, half);
  }

  /** Mean wind speed at its sensor in an hour [m/s]. */
  OptionalDouble hourlyWindMs(int hour) {
    return mean(Weather.WIND, 2 * hour, 2 * hour + 1);
  }

  /** Mean air temperature of an hour [°C]. */
  OptionalDouble hourlyAirTemperatureC(int hour) {
    return mean(Weather.AIR_TEMPERATURE, 2 * hour, 2 * hour + 1);
  }

  /** Mean relative humidity of an hour [%]. */
  OptionalDouble hourlyHumidityPct(int hour) {
    return mean(Weather.HUMIDITY, 2 * hour, 2 * hour + 1);
  }

  /**
   * Depth of snow on the ground in a half hour [m], the latest of the day before when the half hour
   * has none: falling snow blinds its sensor. 0 when the sheet has no channel for it.
   */
  OptionalDouble snowDepthM(int half) {
    if (!means.containsKey(Weather.SNOW_DEPTH)) {
      return OptionalDouble.of(0);
    }
    Means snow = means.get(Weather.SNOW_DEPTH);
    OptionalInt latest =
        IntStream.rangeClosed(0, Math.min(half, SNOW_HOLDS))
            .map(ago -> half - ago)
            .filter(h -> snow.of(h, h).isPresent())
            .findFirst();
    return latest.isPresent()
        ? snow.of(latest.getAsInt(), latest.getAsInt())
        : OptionalDouble.empty();
  }

  private OptionalDouble mean(Weather quantity, int first, int last) {
    Means mean = means.get(quantity);
    return mean == null ? OptionalDouble.empty() : mean.of(first, last);
  }

  /** Means of one channel, each reading weighted by the time it stands for. */
  private final class Means {
    private final Weather quantity;
    private final Column column;
    private final double[] sum = new double[(int) (span.lengthMs() / HALF_MS)];
    private final long[] weightMs = new long[sum.length];

    Means(Weather quantity, Column column) {
      this.quantity = quantity;
      this.column = column;
    }

    void add(int row, long fromMs, long toMs) {
      double value = column.get(row);
      if (!quantity.possible(value)) {
        return;
      }
      long from = fromMs;
      while (from < toMs) {
        int half = (int) ((from - span.fromMs()) / HALF_MS);
        long to = Math.min(toMs, span.fromMs() + (half + 1) * HALF_MS);
        sum[half] += value * (to - from);
        weightMs[half] += to - from;
        from = to;
      }
    }

    OptionalDouble of(int first, int last) {
      double total = 0;
      long weight = 0;
      for (int half = first; half <= last; half++) {
        total += sum[half];
        weight += weightMs[half];
      }
      return weight == 0 ? OptionalDouble.empty() : OptionalDouble.of(total / weight);
    }
  }
}
