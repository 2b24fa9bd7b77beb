package org.rimebook.practice.faults;

import org.rimebook.findings.FindingKind;
import org.rimebook.practice.DeadWire;
import org.rimebook.practice.Precipitation;
import org.rimebook.practice.bench.Draws;
import org.rimebook.practice.bench.Planting;
import org.rimebook.station.Interval;

/** Wires that fall silent, get stuck, creep, shift, grow noisy, run out of range, are struck. */
final class WireFaults {

  private static final long MINUTE_MS = 60_000;
  private static final long HOUR_MS = 60 * MINUTE_MS;
  private static final double DAY_MIN = 1440;

  /** What falls while a wire of a coarse counter is stuck, when that must be seen [mm]. */
  private static final double SEEN_MM = 3;

  /** Creep and shift that must be seen [mm]. */
  private static final double CLEAR_CREEP_MM = 0.6;

  private static final double CLEAR_SHIFT_MM = 0.5;

  /** Struck readings that must be seen. */
  private static final int CLEAR_STRUCK = 12;

  private WireFaults() {}

  /** Silent at once; after jumping about, back by itself for days and silent again; all at once. */
  static void silent(Planting planting) {
    Draws draws = planting.draws();
    int wire = draws.below(wires(planting));
    Interval atOnce = drawn(planting, 0.05, 0.2, minutes(draws, 360, 20 * DAY_MIN));
    silence(planting, wire, atOnce, 0);
    int other = (wire + 1) % wires(planting);
    Interval first = drawn(planting, 0.4, 0.5, minutes(draws, DAY_MIN, 10 * DAY_MIN));
    silence(planting, other, first, Math.min(first.lengthMs() / 2, minutes(draws, 10, DAY_MIN)));
    long from = first.toMs() + minutes(draws, DAY_MIN, 4 * DAY_MIN);
    Interval again = new Interval(from, from + minutes(draws, DAY_MIN, 15 * DAY_MIN));
    silence(planting, other, again, draws.chance(0.5) ? 0 : minutes(draws, 30, 300));
    Interval all = drawn(planting, 0.85, 0.95, minutes(draws, 60, 720));
    for (int each = 0; each < wires(planting); each++) {
      planting.builder().frequency(new DeadWire(each, all, 0));
    }
    planting.due(FindingKind.SILENT_WIRE, all);
  }

  private static void silence(Planting planting, int wire, Interval span, long erraticMs) {
    planting.builder().frequency(new DeadWire(wire, span, erraticMs));
    planting.due(FindingKind.SILENT_WIRE, span, planting.wire(wire));
  }

  /** Stuck at any time; each reading of a fine counter tells. */
  static void stuck(Planting planting) {
    Draws draws = planting.draws();
    for (int i = 0; i < 3; i++) {
      Interval span =
          drawn(planting, 0.1 + 0.3 * i, 0.25 + 0.3 * i, minutes(draws, 180, 10 * DAY_MIN));
      int wire = draws.below(wires(planting));
      planting.builder().frequency(new WireEffects.Stuck(wire, span));
      planting.due(FindingKind.STUCK_WIRE, span, planting.wire(wire));
    }
  }

  /** Stuck from before something falls; with a coarse counter only that tells. */
  static void stuckInStorm(Planting planting) {
    Draws draws = planting.draws();
    Precipitation falling = planting.falling();
    int done = 0;
    for (int tries = 0; done < 3 && tries < 200; tries++) {
      long wetMs = draws.oneOf(falling.pulses()).interval().fromMs() / MINUTE_MS * MINUTE_MS;
      long from = wetMs - minutes(draws, 10, 600);
      Interval span = new Interval(from, wetMs + minutes(draws, 600, 6 * DAY_MIN));
      double fallsMm = falling.amountMm(span);
      if (fallsMm < 0.5 * SEEN_MM || !planting.take(span)) {
        continue;
      }
      int wire = draws.below(wires(planting));
      planting.builder().frequency(new WireEffects.Stuck(wire, span));
      write(planting, FindingKind.STUCK_WIRE, span, fallsMm >= SEEN_MM, wire);
      done++;
    }
  }

  /** Two wires creep one after the other, up or down, at once or ever faster, some with a jump. */
  static void creep(Planting planting) {
    Draws draws = planting.draws();
    int wire = draws.below(wires(planting));
    for (int i = 0; i < 2; i++) {
      Interval span =
          drawn(
              planting,
              0.12 + 0.45 * i,
              0.2 + 0.45 * i,
              minutes(draws, 12 * DAY_MIN, 50 * DAY_MIN));
      double days = span.lengthMs() / (DAY_MIN * MINUTE_MS);
      double mmPerDay = draws.spread(0.03, 0.4) * sign(draws);
      WireEffects.Creep creep =
          new WireEffects.Creep(
              wire,
              span,
              mmPerDay,
              draws.chance(0.5) ? 0 : 0.4 * days,
              draws.chance(0.3) ? draws.between(-1, 1) : 0);
      planting.builder().depth(creep);
      boolean clear = Math.abs(creep.atMm(days)) >= CLEAR_CREEP_MM;
      write(planting, FindingKind.DRIFTING_WIRE, span, clear, wire);
      wire = (wire + 1) % wires(planting);
    }
  }

  /** The zero of two wires shifts at once and stays. */
  static void shift(Planting planting) {
    Draws draws = planting.draws();
    for (int i = 0; i < 2; i++) {
      long at = drawn(planting, 0.15 + 0.4 * i, 0.4 + 0.4 * i, HOUR_MS).fromMs();
      int wire = draws.below(wires(planting));
      double mm = draws.spread(0.3, 5) * sign(draws);
      planting.builder().depth(new WireEffects.Shift(wire, at, mm));
      write(
          planting,
          FindingKind.DRIFTING_WIRE,
          new Interval(at - HOUR_MS, at + HOUR_MS),
          Math.abs(mm) >= CLEAR_SHIFT_MM,
          wire);
    }
  }

  /** A wire is 2 to 10 times as noisy as before, twice. */
  static void noisy(Planting planting) {
    Draws draws = planting.draws();
    for (int i = 0; i < 2; i++) {
      Interval span =
          drawn(planting, 0.1 + 0.45 * i, 0.4 + 0.45 * i, minutes(draws, 360, 21 * DAY_MIN));
      int wire = draws.below(wires(planting));
      double times = draws.spread(2, 10);
      planting.builder().depth(new WireEffects.Noisy(wire, span, times));
      write(planting, FindingKind.NOISY_WIRE, span, times >= 3, wire);
    }
  }

  /** A wire gives a frequency far from any it could have, twice. */
  static void outOfRange(Planting planting) {
    Draws draws = planting.draws();
    for (int i = 0; i < 2; i++) {
      Interval span =
          drawn(planting, 0.1 + 0.45 * i, 0.4 + 0.45 * i, minutes(draws, 90, 5 * DAY_MIN));
      int wire = draws.below(wires(planting));
      double hz = draws.chance(0.5) ? draws.between(0, 500) : draws.between(5500, 8000);
      planting.builder().frequency(new WireEffects.OutOfRange(wire, span, hz));
      planting.due(FindingKind.WIRE_OUT_OF_RANGE, span, planting.wire(wire));
    }
  }

  /** Bursts of 1 to 6 h that strike 5 to 30 % of the readings of one wire or of all. */
  static void interference(Planting planting) {
    Draws draws = planting.draws();
    for (int i = 0; i < 4; i++) {
      Interval span = drawn(planting, 0.05 + 0.22 * i, 0.22 + 0.22 * i, minutes(draws, 60, 360));
      double share = draws.spread(0.05, 0.3);
      double sizeHz = draws.spread(20, 300);
      boolean all = draws.chance(0.5);
      int one = draws.below(wires(planting));
      for (int wire = 0; wire < wires(planting); wire++) {
        if (all || wire == one) {
          planting.builder().frequency(new WireEffects.Struck(wire, span, share, sizeHz));
        }
      }
      boolean clear = share * span.lengthMs() / (2 * MINUTE_MS) >= CLEAR_STRUCK;
      String[] names = all ? new String[0] : new String[] {planting.wire(one)};
      if (clear) {
        planting.due(FindingKind.INTERFERENCE, span, names);
      } else {
        planting.may(FindingKind.INTERFERENCE, span, names);
      }
    }
  }

  private static void write(
      Planting planting, FindingKind kind, Interval span, boolean clear, int wire) {
    if (clear) {
      planting.due(kind, span, planting.wire(wire));
    } else {
      planting.may(kind, span, planting.wire(wire));
    }
  }

  private static int wires(Planting planting) {
    return planting.sheet().wires().size();
  }

  private static double sign(Draws draws) {
    return draws.chance(0.5) ? 1 : -1;
  }

  private static long minutes(Draws draws, double from, double to) {
    return Math.round(draws.spread(from, to)) * MINUTE_MS;
  }

  /** A span that starts on a whole minute in a part of the season. */
  private static Interval drawn(Planting planting, double from, double to, long lengthMs) {
    long into = (long) (planting.draws().between(from, to) * planting.span().lengthMs());
    long start = planting.span().fromMs() + into / MINUTE_MS * MINUTE_MS;
    return new Interval(start, Math.min(start + lengthMs, planting.span().toMs()));
  }
}
