package org.rimebook.practice.faults;

import java.time.Duration;
import org.rimebook.findings.FindingKind;
import org.rimebook.practice.Cap;
import org.rimebook.practice.Leak;
import org.rimebook.practice.Precipitation;
import org.rimebook.practice.Stiffened;
import org.rimebook.practice.Surroundings;
import org.rimebook.practice.Visit;
import org.rimebook.practice.Weather;
import org.rimebook.practice.bench.Planting;
import org.rimebook.station.Interval;

/** Faults of the bucket as a whole. */
final class LevelFaults {

  private static final long MINUTE_MS = 60_000;
  private static final long HOUR_MS = 60 * MINUTE_MS;
  private static final long DAY_MS = 24 * HOUR_MS;
  private static final int TRIES = 400;

  /** Held-up catch that has to be found where the depth of snow is measured [mm]. */
  private static final double DUE_CAP_MM = 1;

  /** Readings less often tell nothing of how wires jump about. */
  private static final long MOST_STEP_MS = 2 * MINUTE_MS;

  private static final double SMALL_CAP_MM = 0.5;

  private LevelFaults() {}

  /** Caps that form in snow and let go in warmth, sun or wind, with snow depth measured. */
  static void caps(Planting planting) {
    SnowSensor.beside(planting);
    int count = 3 + planting.draws().below(4);
    int done = 0;
    for (int tries = 0; done < count && tries < TRIES; tries++) {
      done += cap(planting) ? 1 : 0;
    }
  }

  private static boolean cap(Planting planting) {
    Precipitation falling = planting.falling();
    long from = planting.draws().oneOf(falling.pulses()).interval().fromMs();
    from = Math.floorDiv(from, MINUTE_MS) * MINUTE_MS;
    Surroundings around = planting.builder().surroundings();
    long to = lettingGo(around, from);
    if (to < 0) {
      return false;
    }
    Interval blocked = new Interval(from, to);
    Duration release = Duration.ofMinutes(Math.round(planting.draws().spread(10, 90)));
    Interval held = new Interval(from, to + release.toMillis());
    Interval whole = new Interval(from, held.toMs() + HOUR_MS);
    double heldMm = falling.amountMm(blocked);
    if (heldMm < SMALL_CAP_MM || !planting.take(whole)) {
      return false;
    }
    planting.builder().cap(new Cap(blocked, release));
    Interval since = new Interval(from, from + blocked.lengthMs() / 2);
    boolean mostlyLate = falling.amountMm(since) < heldMm / 4;
    if (heldMm >= DUE_CAP_MM && !mostlyLate) {
      planting.due(FindingKind.CAPPING, held);
    } else {
      planting.may(FindingKind.CAPPING, held);
    }
    planting.may(FindingKind.ZERO_RUN, held);
    return true;
  }

  /** When a cap that forms at a time lets go [ms]; −1 when it doesn't form or holds too long. */
  private static long lettingGo(Surroundings around, long fromMs) {
    Weather weather = around.weather();
    int first = weather.sampling().indexAt(fromMs);
    if (weather.airTemperatureDegC(first) > -0.5) {
      return -1;
    }
    for (long hour = 6; hour <= 48; hour++) {
      long at = fromMs + hour * HOUR_MS;
      if (at + 6 * HOUR_MS > weather.sampling().span().toMs()) {
        return -1;
      }
      int index = weather.sampling().indexAt(at);
      boolean warm = weather.airTemperatureDegC(index) > 0.5;
      boolean sunny = around.sunlight(index) > 0.25;
      boolean windy = weather.windMs(index) > 8;
      if (warm || sunny || windy) {
        return at;
      }
    }
    return -1;
  }

  /** Snow depth and humidity beside the wires, and nothing wrong. */
  static void snowSensor(Planting planting) {
    SnowSensor.beside(planting);
  }

  /** A bucket that runs full in the season's second half, and is emptied weeks later or never. */
  static void overflow(Planting planting) {
    Interval span = planting.span();
    long full = span.fromMs() + (long) (planting.draws().between(0.45, 0.8) * span.lengthMs());
    full = nextRain(planting.falling(), full);
    long end = full + (long) (planting.draws().between(3, 30) * DAY_MS);
    boolean emptied = end < span.toMs() - DAY_MS;
    long dry = emptied ? end : span.toMs();
    double chargeMm = planting.draws().between(80, 150);
    double capacityMm = chargeMm + planting.falling().accumulatedMm(full);
    planting.builder().charge(chargeMm);
    Interval nothing = new Interval(full, dry);
    planting.falling(planting.falling().without(nothing));
    if (emptied) {
      Interval visit = new Interval(end, end + HOUR_MS);
      planting.builder().visit(new Visit(visit, true, chargeMm));
      planting.due(FindingKind.UNMARKED_VISIT, visit);
      runsFullAgain(planting, visit.toMs(), capacityMm - chargeMm);
    }
    double statedMm = Math.rint(capacityMm * planting.draws().between(0.997, 1.003));
    planting.writes(sheet -> Sheets.capacity(sheet, statedMm));
    planting.due(FindingKind.OVERFLOW, nothing);
    planting.may(FindingKind.NEAR_CAPACITY, nothing);
    planting.may(FindingKind.ZERO_RUN, nothing);
  }

  /** What it can't hold after it was emptied isn't caught either. */
  private static void runsFullAgain(Planting planting, long sinceMs, double roomMm) {
    Interval rest = new Interval(sinceMs, planting.span().toMs());
    long full = rest.fromMs();
    while (full < rest.toMs()
        && planting.falling().amountMm(new Interval(rest.fromMs(), full)) < roomMm) {
      full += MINUTE_MS;
    }
    if (full < rest.toMs()) {
      Interval nothing = new Interval(full, rest.toMs());
      planting.falling(planting.falling().without(nothing));
      planting.due(FindingKind.OVERFLOW, nothing);
      planting.may(FindingKind.NEAR_CAPACITY, rest);
    }
  }

  /** The middle of the next pulse at or after an instant, when it pours. */
  private static long nextRain(Precipitation falling, long ms) {
    return falling.pulses().stream()
        .map(pulse -> pulse.interval())
        .filter(interval -> interval.fromMs() >= ms)
        .findFirst()
        .map(interval -> Math.floorDiv(interval.fromMs() + interval.toMs(), 2))
        .orElse(ms);
  }

  /** A bucket nearly full at the end. */
  static void nearlyFull(Planting planting) {
    Interval span = planting.span();
    double chargeMm = planting.draws().between(80, 150);
    double topMm = chargeMm + planting.falling().accumulatedMm(span.toMs());
    double share = planting.draws().between(0.92, 0.98);
    planting.builder().charge(chargeMm);
    planting.writes(sheet -> Sheets.capacity(sheet, Math.rint(topMm / share)));
    long from = span.fromMs();
    while (chargeMm + planting.falling().accumulatedMm(from) < 0.9 * topMm / share) {
      from += HOUR_MS;
    }
    planting.due(FindingKind.NEAR_CAPACITY, new Interval(from, span.toMs()));
  }

  /** Leaks of 0.3 to 3 mm/d for four days to five weeks. */
  static void leak(Planting planting) {
    Interval span = planting.span();
    double mmPerDay = planting.draws().spread(0.3, 3);
    long lengthMs = (long) (planting.draws().spread(4, 35) * DAY_MS);
    long from =
        span.fromMs()
            + (long) (planting.draws().between(0.05, 0.95) * (span.lengthMs() - lengthMs));
    Interval leaking = new Interval(from, from + lengthMs);
    planting.builder().leak(new Leak(leaking, mmPerDay));
    planting.due(FindingKind.LEAK, leaking);
    planting.may(FindingKind.EVAPORATION, span);
  }

  /** A frozen bucket: for days the wires no longer feel the wind. */
  static void frozen(Planting planting) {
    Interval span = planting.span();
    for (int tries = 0; tries < TRIES; tries++) {
      long from = span.fromMs() + (long) (planting.draws().between(0.1, 0.9) * span.lengthMs());
      Interval frozen = new Interval(from, from + (long) (planting.draws().spread(1, 8) * DAY_MS));
      if (meanDegC(planting, frozen) < -8 && planting.take(frozen)) {
        double left = planting.draws().between(0.05, 0.3);
        planting.builder().depth(new Stiffened(frozen, left));
        long stepMs = planting.builder().surroundings().sampling().stepMs();
        if (stepMs <= MOST_STEP_MS) {
          planting.due(FindingKind.FROZEN, frozen);
        } else {
          planting.may(FindingKind.FROZEN, frozen);
        }
        return;
      }
    }
  }

  private static double meanDegC(Planting planting, Interval interval) {
    Weather weather = planting.builder().surroundings().weather();
    int from = weather.sampling().indexAt(interval.fromMs());
    int to = weather.sampling().indexAt(Math.min(interval.toMs(), planting.span().toMs()));
    double sum = 0;
    for (int i = from; i <= to; i++) {
      sum += weather.airTemperatureDegC(i);
    }
    return sum / (to - from + 1);
  }

  /** Nothing is caught for days though it snows: the inlet is iced shut for good. */
  static void iced(Planting planting) {
    SnowSensor.beside(planting);
    for (int tries = 0; tries < TRIES; tries++) {
      long from = planting.draws().oneOf(planting.falling().pulses()).interval().fromMs();
      Interval shut = new Interval(from, from + (long) (planting.draws().spread(1, 6) * DAY_MS));
      double lostMm = planting.falling().amountMm(shut);
      if (lostMm >= 10 && meanDegC(planting, shut) < -3 && planting.take(shut)) {
        planting.falling(planting.falling().without(shut));
        planting.due(FindingKind.ZERO_RUN, shut);
        return;
      }
    }
  }
}
