package org.rimebook.practice.faults;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.random.RandomGenerator;
import org.rimebook.practice.Chance;
import org.rimebook.practice.Precipitation;
import org.rimebook.practice.Weather;
import org.rimebook.practice.bench.Planting;
import org.rimebook.record.Column;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Channel;
import org.rimebook.station.Unit;

/**
 * A sensor of snow depth and one of humidity beside the gauge. New snow lies 0.7 to 1.4 cm deep for
 * each millimetre, settles by a third a day and melts by 0.1 cm an hour and °C; wind moves it about
 * by half a centimetre, and single readings are a centimetre off. Humid while it falls.
 */
final class SnowSensor {

  private static final long HOUR = 3_600_000;
  private static final double HOUR_MS = HOUR;
  private static final double CM_PER_M = 100;
  private static final double DEEP_CM = 20;
  private static final double SNOW_BELOW_DEG_C = 1;
  private static final double SETTLES_PER_HOUR = 0.33 / 24;
  private static final double MELT_CM_PER_HOUR_DEG_C = 0.1;
  private static final double NOISE_CM = 1;
  private static final double WIND_CM = 0.5;
  private static final double WIND_MEMORY_HOURS = 24;

  private final Weather weather;
  private final Precipitation falling;
  private final double cmPerMm;
  private final RandomGenerator chance;
  private final int wires;
  private final int channels;

  private SnowSensor(Planting planting) {
    weather = planting.builder().surroundings().weather();
    falling = planting.falling();
    cmPerMm = planting.draws().between(0.7, 1.4);
    chance = Chance.of((long) planting.draws().between(0, 1e12), "snow sensor");
    wires = planting.sheet().wires().size();
    channels = planting.sheet().channels().size();
  }

  /** Puts both beside a gauge; what falls until now is what lies on the ground. */
  static void beside(Planting planting) {
    SnowSensor sensor = new SnowSensor(planting);
    planting.writes(
        sheet ->
            Sheets.channels(
                sheet,
                channel(Channel.SNOW_DEPTH, "snow_cm", Unit.CENTIMETRE),
                channel(Channel.RELATIVE_HUMIDITY, "rh_pct", Unit.PERCENT)));
    planting.logs(sensor::logged);
  }

  private static Channel channel(String quantity, String column, Unit unit) {
    return new Channel(quantity, column, unit, OptionalDouble.empty());
  }

  private SeasonRecord logged(SeasonRecord record) {
    int size = record.size();
    double[] percent = new double[size];
    long[] stampsMs = new long[size];
    for (int row = 0; row < size; row++) {
      stampsMs[row] = record.stampMs(row);
      percent[row] = StrictMath.rint(humidity(stampsMs[row]));
    }
    List<Column> frequencies = IntStream.range(0, wires).mapToObj(record::frequency).toList();
    List<Column> beside =
        Stream.concat(
                IntStream.range(0, channels).mapToObj(record::channel),
                Stream.of(Column.copyOf(snowM(stampsMs), size), Column.copyOf(percent, size)))
            .toList();
    return new SeasonRecord(stampsMs, frequencies, beside, record.sampling(), record.provenance());
  }

  private double[] snowM(long[] stampsMs) {
    double[] metres = new double[stampsMs.length];
    double deepCm = 5;
    double moved = 0;
    long before = stampsMs[0];
    for (int row = 0; row < metres.length; row++) {
      long now = stampsMs[row];
      double hours = (now - before) / HOUR_MS;
      double degC = weather.airTemperatureDegC(index(now));
      double fellMm = falling.accumulatedMm(now) - falling.accumulatedMm(before);
      deepCm += degC < SNOW_BELOW_DEG_C ? cmPerMm * fellMm : 0;
      deepCm -= SETTLES_PER_HOUR * hours * Math.min(deepCm, DEEP_CM);
      deepCm = Math.max(0, deepCm - MELT_CM_PER_HOUR_DEG_C * hours * Math.max(0, degC));
      double kept = StrictMath.exp(-hours / WIND_MEMORY_HOURS);
      moved = kept * moved + WIND_CM * StrictMath.sqrt(1 - kept * kept) * chance.nextGaussian();
      metres[row] = StrictMath.rint(deepCm + moved + NOISE_CM * chance.nextGaussian()) / CM_PER_M;
      before = now;
    }
    return metres;
  }

  private int index(long ms) {
    return Math.min(weather.sampling().size() - 1, weather.sampling().indexAt(ms));
  }

  /** From 60 % under a clear sky to 90 %, and about 95 % within an hour of anything falling. */
  private double humidity(long now) {
    double dry = 60 + 30 * weather.unsettled(index(now));
    boolean wet = falling.accumulatedMm(now + HOUR) > falling.accumulatedMm(now - HOUR);
    return Math.min(100, (wet ? 95 : dry) + 2 * chance.nextGaussian());
  }
}
