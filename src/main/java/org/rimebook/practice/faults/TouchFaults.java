package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.rimebook.findings.FindingKind;
import org.rimebook.practice.Weather;
import org.rimebook.practice.bench.Draws;
import org.rimebook.practice.bench.Planting;
import org.rimebook.station.Interval;

/** What touches, shakes or warms wires: friction, strong wind, the sun. */
final class TouchFaults {

  private static final long MINUTE_MS = 60_000;
  private static final long HOUR_MS = 60 * MINUTE_MS;
  private static final long DAY_MS = 24 * HOUR_MS;
  private static final int TRIES = 400;

  /** Slips that must be seen [mm], and how many; at the bucket with at most so long between. */
  private static final double CLEAR_SLIP_MM = 0.5;

  private static final int CLEAR_SLIPS = 4;
  private static final int CLEAR_STEPS = 5;
  private static final long NEAR_MS = 12 * HOUR_MS;

  /** What falls while something touches, so that it mostly slips often enough [mm]. */
  private static final double WET_MM = 8;

  /** Readings less often can't tell a step of the bucket from a burst of rain. */
  private static final long MOST_STEP_MS = 2 * MINUTE_MS;

  /** Noise that matters [mm], so many times the season's usual; what the wind adds to it. */
  private static final double NOISY_MM = 0.5;

  private static final double TIMES_USUAL = 3;
  private static final double CLEARLY = 1.2;

  /** A wave that must be seen [mm]. */
  private static final double CLEAR_WAVE_MM = 0.25;

  private TouchFaults() {}

  /** Twice a wire sticks and slips for 3 to 12 days. */
  static void wire(Planting planting) {
    Draws draws = planting.draws();
    int wire = draws.below(planting.sheet().wires().size());
    int done = 0;
    for (int tries = 0; done < 2 && tries < TRIES; tries++) {
      Interval span = wet(planting, (long) (draws.spread(3, 12) * DAY_MS));
      if (planting.falling().amountMm(span) >= WET_MM && planting.take(span)) {
        Sticking sticking = new Sticking(planting, wire, span);
        planting.builder().depth(sticking);
        boolean clear = sticking.slips(CLEAR_SLIP_MM).size() >= CLEAR_SLIPS;
        write(planting, sticking.slips(0), clear, planting.wire(wire));
        planting.may(FindingKind.DRIFTING_WIRE, span, planting.wire(wire));
        wire = (wire + 1) % planting.sheet().wires().size();
        done++;
      }
    }
  }

  /** Twice the bucket sticks and slips for a day or two, and all wires with it. */
  static void bucket(Planting planting) {
    long stepMs = planting.builder().surroundings().sampling().stepMs();
    int done = 0;
    for (int tries = 0; done < 2 && tries < TRIES; tries++) {
      Interval span = wet(planting, (long) (planting.draws().spread(0.7, 2) * DAY_MS));
      if (planting.falling().amountMm(span) >= WET_MM && planting.take(span)) {
        Sticking sticking = new Sticking(planting, Sticking.ALL, span);
        planting.builder().depth(sticking);
        List<Sticking.Slip> near = nearest(sticking.slips(CLEAR_SLIP_MM));
        boolean clear = near.size() >= CLEAR_STEPS && stepMs <= MOST_STEP_MS;
        write(planting, clear ? near : sticking.slips(0), clear);
        done++;
      }
    }
  }

  /** A stretch that starts as something begins to fall. */
  private static Interval wet(Planting planting, long lengthMs) {
    long from = planting.draws().oneOf(planting.falling().pulses()).interval().fromMs();
    from = Math.floorDiv(from, MINUTE_MS) * MINUTE_MS;
    return new Interval(from, from + lengthMs);
  }

  /** The most slips that follow each other without a long pause. */
  private static List<Sticking.Slip> nearest(List<Sticking.Slip> slips) {
    List<Sticking.Slip> best = List.of();
    int from = 0;
    for (int i = 0; i < slips.size(); i++) {
      boolean near = i == 0 || slips.get(i).sinceMs() - slips.get(i - 1).atMs() <= NEAR_MS;
      from = near ? from : i;
      best = i + 1 - from > best.size() ? slips.subList(from, i + 1) : best;
    }
    return best;
  }

  private static void write(
      Planting planting, List<Sticking.Slip> slips, boolean clear, String... wires) {
    if (slips.isEmpty()) {
      return;
    }
    Interval span = new Interval(slips.get(0).sinceMs(), slips.get(slips.size() - 1).atMs());
    if (clear) {
      planting.due(FindingKind.FRICTION, span, wires);
    } else {
      planting.may(FindingKind.FRICTION, span, wires);
    }
  }

  /** In a few of the windiest stretches of the season the wind shakes the bucket. */
  static void wind(Planting planting) {
    Draws draws = planting.draws();
    double usualMm = usualNoiseMm(planting);
    double clearMm = CLEARLY * Math.max(NOISY_MM, TIMES_USUAL * usualMm);
    int count = 2 + draws.below(3);
    int done = 0;
    for (Interval windy : windiest(planting)) {
      Interval span = new Interval(windy.fromMs(), windy.toMs() + draws.below(180) * MINUTE_MS);
      if (done < count && planting.take(span)) {
        double mm = draws.spread(0.6, 1.5);
        planting.builder().depth(new MovedWires.Shaken(span, mm, draws.between(0.2, 0.7)));
        if (mm >= clearMm) {
          planting.due(FindingKind.WIND_PUMPING, span);
        } else {
          planting.may(FindingKind.WIND_PUMPING, span);
        }
        done++;
      }
    }
  }

  /** Noise of a reading at the season's median wind [mm]. */
  private static double usualNoiseMm(Planting planting) {
    Weather weather = planting.builder().surroundings().weather();
    double[] hourly =
        IntStream.range(0, (int) (planting.span().lengthMs() / HOUR_MS))
            .mapToDouble(hour -> windMs(weather, planting.span().fromMs() + hour * HOUR_MS, 1))
            .sorted()
            .toArray();
    return planting.noiseMm(hourly[hourly.length / 2]);
  }

  /** Stretches of three hours, the windiest first. */
  private static List<Interval> windiest(Planting planting) {
    Weather weather = planting.builder().surroundings().weather();
    List<Interval> all = new ArrayList<>();
    for (long ms = planting.span().fromMs(); ms < planting.span().toMs(); ms += 3 * HOUR_MS) {
      all.add(new Interval(ms, ms + 3 * HOUR_MS));
    }
    all.sort(Comparator.comparingDouble(span -> -windMs(weather, span.fromMs(), 3)));
    return all;
  }

  private static double windMs(Weather weather, long fromMs, int hours) {
    int from = weather.sampling().indexAt(fromMs);
    int to = weather.sampling().indexAt(fromMs + hours * HOUR_MS);
    return IntStream.rangeClosed(from, to).mapToDouble(weather::windMs).average().orElse(0);
  }

  /** One or two wires move in the sun all season. */
  static void sun(Planting planting) {
    Draws draws = planting.draws();
    int wires = planting.sheet().wires().size();
    int wire = draws.below(wires);
    int count = 1 + draws.below(2);
    double clear = usuallyClear(planting);
    double[] sine = new double[wires];
    double[] cosine = new double[wires];
    for (int i = 0; i < count; i++) {
      int own = (wire + i) % wires;
      double mm = draws.between(0.2, 0.8);
      double riseHour = draws.between(7, 11);
      planting.builder().depth(new MovedWires.InSun(own, mm / clear, riseHour));
      sine[own] = mm * StrictMath.sin(2 * StrictMath.PI * riseHour / 24);
      cosine[own] = mm * StrictMath.cos(2 * StrictMath.PI * riseHour / 24);
    }
    double meanSine = Arrays.stream(sine).average().orElse(0);
    double meanCosine = Arrays.stream(cosine).average().orElse(0);
    for (int each = 0; each < wires; each++) {
      double apartMm = StrictMath.hypot(sine[each] - meanSine, cosine[each] - meanCosine);
      if (apartMm >= CLEAR_WAVE_MM) {
        planting.due(FindingKind.DAILY_WAVE, planting.span(), planting.wire(each));
      } else {
        planting.may(FindingKind.DAILY_WAVE, planting.span(), planting.wire(each));
      }
    }
  }

  /** How clear the sky usually is. */
  private static double usuallyClear(Planting planting) {
    Weather weather = planting.builder().surroundings().weather();
    return IntStream.range(0, weather.sampling().size())
        .mapToDouble(i -> MovedWires.clear(weather, i))
        .average()
        .orElse(1);
  }
}
