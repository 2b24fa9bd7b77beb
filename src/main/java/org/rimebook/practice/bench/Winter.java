package org.rimebook.practice.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.findings.FindingKind;
import org.rimebook.notebook.Notebook;
import org.rimebook.practice.Climate;
import org.rimebook.practice.DailyWave;
import org.rimebook.practice.Evaporation;
import org.rimebook.practice.Precipitation;
import org.rimebook.practice.Quantisation;
import org.rimebook.practice.ReadingNoise;
import org.rimebook.practice.Sampling;
import org.rimebook.practice.SeasonBuilder;
import org.rimebook.practice.Spikes;
import org.rimebook.practice.SunDrift;
import org.rimebook.practice.TemperatureCoefficient;
import org.rimebook.practice.Tilt;
import org.rimebook.practice.Weather;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;

/**
 * One winter of a class: everything the class leaves open is drawn from the seed. A variant changes
 * what it is about and nothing else.
 *
 * @param scenario the class
 * @param variant what is otherwise
 * @param seed seed; any number
 * @param days length [d]; seasons read every few seconds last two months at most
 */
public record Winter(Scenario scenario, Variant variant, long seed, int days) {

  /** Half a year [d]. */
  public static final int HALF_A_YEAR = 182;

  private static final int MOST_FAST_DAYS = 60;
  private static final double WINDY_MS = 4;
  private static final long FAST_MS = 20_000;
  private static final long MINUTE_MS = 60_000;
  private static final long HOUR_MS = 60 * MINUTE_MS;
  private static final long DAY_MS = 24 * HOUR_MS;
  private static final long EDGE_MS = 8 * HOUR_MS;
  private static final double TOO_COLD_DEG_C = -4;
  private static final double TOO_MUCH_MM = 6;
  private static final double NEARLY_FULL = 0.85;
  private static final double MILD_DEG_C = -1;
  private static final double CERTAIN_MM_PER_DAY = 0.1;

  /** Noise called pumping [mm], and how many times the season's median; measured a fifth off. */
  private static final double PUMPS_MM = 0.5;

  private static final double PUMPS_TIMES = 3;
  private static final double NEARLY_PUMPS = 0.8;

  /** Wires that move so far in the sun may lie 0.15 mm from their mean [mm]. */
  private static final double SEEN_SUN_MM = 0.15;

  private static final Instant NOVEMBER = Instant.parse("2024-11-01T00:00:00Z");

  /** The season. */
  public MarkedSeason season() {
    return season(Planter.NONE);
  }

  /** The season with more faults than the class has. */
  public MarkedSeason season(Planter planter) {
    Draws draws = new Draws(seed, "bench/" + scenario.label());
    long own = draws.seed();
    StationSheet sheet = BenchGauge.drawn(draws);
    Sampling sampling = sampling(sheet);
    double windMs = draws.from(scenario.setting().windMs());
    Climate climate =
        new Climate(
            draws.between(-2, 4),
            draws.between(3, 9),
            draws.between(2, 7.5),
            draws.between(3, 6),
            windMs);
    Weather weather = Weather.simulated(sampling, sheet.utcOffset(), climate, own);
    SeasonBuilder builder = new SeasonBuilder(sheet, weather, own);
    Precipitation falling = new Sky(scenario, variant, seed).precipitation(weather, own);
    falling = withoutEdges(falling, sampling.span());
    double chargeMm = draws.between(100, 300);
    builder.fell(falling).charge(chargeMm);
    evaporation(builder, falling, new Draws(own, "bench/evaporation"));
    Hung hung = wires(builder, new Draws(own, "bench/wires"));
    Planting planting =
        new Planting(builder, sheet, sampling.span(), new Draws(own, "bench/mishaps"), falling);
    Mishaps mishaps = new Mishaps(planting);
    evaporates(planting);
    fills(planting, chargeMm);
    poursInTheCold(planting);
    moves(planting, hung);
    mishaps.add(scenario.setting().mishaps());
    planter.plant(planting);
    builder.frequency(new Spikes(draws.between(0.02, 0.1), draws.spread(20, 300)));
    builder.frequency(new Quantisation(inTurn(scenario.setting().counterHz())));
    return new MarkedSeason(
        builder.build(),
        new Notebook(mishaps.entries(), List.of()),
        windMs > WINDY_MS,
        planting.planted(),
        planting.asWritten());
  }

  private <T> T inTurn(List<T> values) {
    return values.get((int) Math.floorMod(seed, (long) values.size()));
  }

  private Sampling sampling(StationSheet sheet) {
    Duration step = inTurn(scenario.setting().steps());
    boolean fast = step.toMillis() < FAST_MS;
    long offsetMs = sheet.utcOffset().getTotalSeconds() * 1000L;
    long start = NOVEMBER.toEpochMilli() - offsetMs + sheet.dayStartsAt().toSecondOfDay() * 1000L;
    long end = start + (fast ? Math.min(MOST_FAST_DAYS, days) : days) * DAY_MS;
    return Sampling.every(step, new Interval(start, end));
  }

  private static Precipitation withoutEdges(Precipitation falling, Interval span) {
    return falling
        .without(new Interval(span.fromMs(), span.fromMs() + EDGE_MS))
        .without(new Interval(span.toMs() - EDGE_MS, Math.addExact(span.toMs(), DAY_MS)));
  }

  /** On even seeds nothing evaporates while it falls, nor within an hour of it. */
  private void evaporation(SeasonBuilder builder, Precipitation falling, Draws draws) {
    double mmPerDay = draws.from(scenario.setting().evaporationMmPerDay());
    if (mmPerDay == 0) {
      return;
    }
    long from = Long.MIN_VALUE;
    if (seed % 2 == 0) {
      for (Interval wet : Sky.wetRuns(falling, HOUR_MS)) {
        builder.evaporation(
            new Evaporation(new Interval(from, Math.max(from, wet.fromMs())), mmPerDay));
        from = wet.toMs();
      }
    }
    builder.evaporation(new Evaporation(new Interval(from, Long.MAX_VALUE), mmPerDay));
  }

  /** Found for certain when it loses a tenth of a millimetre a day in mild weather. */
  private void evaporates(Planting planting) {
    double mmPerDay = planting.builder().evaporationMmPerDay(MILD_DEG_C);
    if (mmPerDay >= CERTAIN_MM_PER_DAY) {
      planting.due(FindingKind.EVAPORATION, planting.span());
    } else if (mmPerDay > 0) {
      planting.may(FindingKind.EVAPORATION, planting.span());
    }
  }

  /** A wet winter may fill the bucket nearly to its rim without anything being wrong. */
  private static void fills(Planting planting, double chargeMm) {
    double capacityMm = planting.sheet().gauge().capacityMm().orElse(Double.POSITIVE_INFINITY);
    double filledMm = chargeMm + planting.falling().amountMm(planting.span());
    if (filledMm >= NEARLY_FULL * capacityMm) {
      planting.may(FindingKind.NEAR_CAPACITY, planting.span());
      planting.may(FindingKind.OVERFLOW, planting.span());
    }
    if (filledMm > capacityMm) {
      planting.may(FindingKind.WIRE_OUT_OF_RANGE, planting.span());
    }
  }

  /** What falls faster than air that cold can bring looks like a cap, and may be called one. */
  private static void poursInTheCold(Planting planting) {
    Weather weather = planting.builder().surroundings().weather();
    Interval span = planting.span();
    for (long ms = span.fromMs(); ms + HOUR_MS < span.toMs(); ms += HOUR_MS) {
      Interval poured = new Interval(ms, ms + 2 * HOUR_MS);
      boolean cold = weather.airTemperatureDegC(weather.sampling().indexAt(ms)) < TOO_COLD_DEG_C;
      if (cold && planting.falling().amountMm(poured) >= TOO_MUCH_MM) {
        planting.may(FindingKind.CAPPING, poured);
      }
    }
  }

  /** Wind and sun may move wires enough to be told of. */
  private static void moves(Planting planting, Hung hung) {
    planting.noise(hung.noise()::atMm);
    pumps(planting);
    if (hung.sunMm() >= SEEN_SUN_MM) {
      planting.may(FindingKind.DAILY_WAVE, planting.span());
    }
  }

  /** Hours in which the noise of strong wind comes near what is called pumping. */
  private static void pumps(Planting planting) {
    Weather weather = planting.builder().surroundings().weather();
    Interval span = planting.span();
    double[] noiseMm = new double[(int) (span.lengthMs() / HOUR_MS)];
    for (int hour = 0; hour < noiseMm.length; hour++) {
      long fromMs = span.fromMs() + hour * HOUR_MS;
      noiseMm[hour] =
          IntStream.rangeClosed(
                  weather.sampling().indexAt(fromMs), weather.sampling().indexAt(fromMs + HOUR_MS))
              .mapToDouble(i -> planting.noiseMm(weather.windMs(i)))
              .average()
              .orElse(0);
    }
    double usualMm = Arrays.stream(noiseMm).sorted().toArray()[noiseMm.length / 2];
    double pumpsMm = NEARLY_PUMPS * Math.max(PUMPS_MM, PUMPS_TIMES * usualMm);
    for (int hour = 0; hour < noiseMm.length; hour++) {
      if (noiseMm[hour] >= pumpsMm) {
        long fromMs = span.fromMs() + hour * HOUR_MS;
        planting.may(FindingKind.WIND_PUMPING, new Interval(fromMs, fromMs + HOUR_MS));
      }
    }
  }

  /**
   * How wires move with nothing wrong.
   *
   * @param sunMm how far in the sun [mm]
   * @param noise noise of readings
   */
  private record Hung(double sunMm, ReadingNoise.Size noise) {}

  private Hung wires(SeasonBuilder builder, Draws draws) {
    double lagMs = seed % 3 == 0 ? draws.between(10, 40) * MINUTE_MS : 0;
    double sunMm = draws.from(scenario.setting().sunMm());
    builder
        .depth(new Tilt(draws.between(0, 0.01), draws.between(0, 360)))
        .depth(new TemperatureCoefficient(-4e-5, 1e-5, draws.between(0, 20), lagMs));
    if (seed % 2 == 0) {
      builder.depth(new DailyWave(sunMm));
    } else {
      builder.depth(new SunDrift(3 * sunMm, draws.between(20, 60) * MINUTE_MS));
    }
    ReadingNoise noise = noise(draws);
    builder.depth(noise);
    return new Hung(sunMm, noise.size());
  }

  private ReadingNoise noise(Draws draws) {
    ReadingNoise.Size size =
        new ReadingNoise.Size(
            draws.between(0.02, 0.045), draws.between(0.2, 0.35), draws.between(1.2, 2));
    double common = seed % 4 == 2 ? draws.between(0.4, 0.6) : draws.between(0.1, 0.4);
    double share = Math.floorMod(seed, 5) == 1 ? draws.between(0.1, 0.4) : 0;
    double memoryMs = draws.between(1, 5) * MINUTE_MS;
    return new ReadingNoise(
        size.times(variant == Variant.DOUBLED_NOISE ? 2 : 1),
        common,
        new ReadingNoise.Memory(variant == Variant.AUTOREGRESSIVE ? 1 : share, memoryMs),
        variant == Variant.HEAVY_TAILS ? ReadingNoise.Tails.HEAVY : ReadingNoise.Tails.NORMAL);
  }
}
