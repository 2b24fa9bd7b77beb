package org.rimebook.practice.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.rimebook.findings.FindingKind;
import org.rimebook.notebook.BadReason;
import org.rimebook.notebook.Entry;
import org.rimebook.notebook.VisitAction;
import org.rimebook.practice.Cap;
import org.rimebook.practice.DeadWire;
import org.rimebook.practice.DriftingWire;
import org.rimebook.practice.Dropouts;
import org.rimebook.practice.InventedGauge;
import org.rimebook.practice.Precipitation;
import org.rimebook.practice.Rattle;
import org.rimebook.practice.SeasonBuilder;
import org.rimebook.practice.Visit;
import org.rimebook.practice.Weather;
import org.rimebook.practice.bench.Setting.Mishap;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;

/** What goes wrong in a winter, with the entries of an analyst who saw it. */
final class Mishaps {

  private static final long MINUTE_MS = 60_000;
  private static final long HOUR_MS = 60 * MINUTE_MS;
  private static final long DAY_MS = 24 * HOUR_MS;
  private static final int TRIES = 200;

  /** More than this sliding in below that is a cap and nothing else [mm], [°C]. */
  private static final double CERTAIN_CAP_MM = 10;

  private static final double CERTAIN_CAP_DEG_C = -6;

  private final Planting planting;
  private final SeasonBuilder builder;
  private final StationSheet sheet;
  private final Interval span;
  private final Draws draws;
  private final List<Entry> entries = new ArrayList<>();

  Mishaps(Planting planting) {
    this.planting = planting;
    this.builder = planting.builder();
    this.sheet = planting.sheet();
    this.span = planting.span();
    this.draws = planting.draws();
  }

  List<Entry> entries() {
    return entries.stream()
        .sorted(Comparator.comparing((Entry e) -> e.span().orElseThrow().fromMs()))
        .toList();
  }

  /** Adds mishaps always in the same order, whatever the set's. */
  void add(Set<Mishap> mishaps) {
    int wire = draws.below(sheet.wires().size());
    if (mishaps.contains(Mishap.VISITS)) {
      visits();
    }
    if (mishaps.contains(Mishap.CAPPING)) {
      caps(planting.falling());
    }
    if (mishaps.contains(Mishap.GAPS)) {
      gaps();
    }
    if (mishaps.contains(Mishap.DEAD_WIRE)) {
      deadWire(wire);
    }
    if (mishaps.contains(Mishap.DRIFTING_WIRE)) {
      driftingWire((wire + 1) % sheet.wires().size());
    }
  }

  private long seasonDays() {
    return span.lengthMs() / DAY_MS;
  }

  /** One in so many days, at least one. */
  private int oneEvery(int days) {
    return (int) Math.max(1, Math.round((double) seasonDays() / days));
  }

  private Entry.Header header(Interval interval, String note) {
    String id = "bench-" + (entries.size() + 1);
    return new Entry.Header(id, Instant.ofEpochMilli(interval.toMs()).toString(), "rb", note);
  }

  /** An instant in a part of the season, on a whole minute. */
  private long instant(double from, double to) {
    long at = (long) (draws.between(from, to) * span.lengthMs());
    return span.fromMs() + at / MINUTE_MS * MINUTE_MS;
  }

  private long minutes(double from, double to) {
    return Math.round(draws.spread(from, to)) * MINUTE_MS;
  }

  private void visits() {
    int count = oneEvery(50);
    int done = 0;
    for (int tries = 0; done < count && tries < TRIES; tries++) {
      long from = instant((done + 0.2) / count, (done + 0.8) / count);
      Interval interval = new Interval(from, from + minutes(40, 120));
      if (planting.take(interval)) {
        visit(interval, done);
        done++;
      }
    }
  }

  private void visit(Interval interval, int number) {
    boolean emptied = number % 2 == 0;
    double litres = emptied ? draws.between(1.5, 4) : draws.between(0, 0.3);
    builder
        .visit(new Visit(interval, emptied, Visit.depthMm(litres, InventedGauge.ORIFICE_AREA_CM2)))
        .depth(new Rattle(interval, draws.between(1, 5)));
    List<VisitAction> actions =
        emptied
            ? List.of(VisitAction.EMPTIED, VisitAction.RECHARGED)
            : List.of(VisitAction.INSPECTED, VisitAction.OIL_ADDED);
    entries.add(
        new Entry.ServiceVisit(
            header(interval, "At the gauge."),
            interval,
            actions,
            emptied ? OptionalDouble.of(litres) : OptionalDouble.empty(),
            emptied ? OptionalDouble.empty() : OptionalDouble.of(litres)));
    planting.due(FindingKind.UNMARKED_VISIT, interval);
  }

  /** A cap forms while it falls, so that something is held up. */
  private void caps(Precipitation falling) {
    int count = oneEvery(40);
    int done = 0;
    for (int tries = 0; done < count && tries < TRIES; tries++) {
      Interval wet = draws.oneOf(falling.pulses()).interval();
      long from = wet.fromMs() / MINUTE_MS * MINUTE_MS;
      Interval blocked = new Interval(from, from + minutes(6 * 60, 48 * 60));
      Duration release = Duration.ofMillis(minutes(10, 90));
      Interval marked =
          new Interval(
              blocked.fromMs() - 10 * MINUTE_MS,
              blocked.toMs() + release.toMillis() + 20 * MINUTE_MS);
      if (planting.take(marked)) {
        builder.cap(new Cap(blocked, release));
        capped(blocked, release);
        entries.add(new Entry.LateCatch(header(marked, "Capped; slid in later."), marked));
        done++;
      }
    }
  }

  /**
   * Most of these can't be told from showers: they form and let go in any weather, in the season's
   * storms a shower is as short, and snow on the ground isn't measured. What slides in faster than
   * it ever snows in deep cold can.
   */
  private void capped(Interval blocked, Duration release) {
    Interval held = new Interval(blocked.fromMs(), blocked.toMs() + release.toMillis());
    Weather weather = builder.surroundings().weather();
    double degC = weather.airTemperatureDegC(weather.sampling().indexAt(held.toMs()));
    boolean certain =
        degC < CERTAIN_CAP_DEG_C && planting.falling().amountMm(blocked) >= CERTAIN_CAP_MM;
    if (certain) {
      planting.due(FindingKind.CAPPING, held);
    } else {
      planting.may(FindingKind.CAPPING, held);
    }
  }

  private void gaps() {
    int count = oneEvery(18);
    int done = 0;
    for (int tries = 0; done < count && tries < TRIES; tries++) {
      long from = instant(0, 1);
      Interval gap = new Interval(from, from + minutes(25, 3 * 24 * 60));
      if (planting.take(gap)) {
        builder.powerFailure(gap);
        planting.due(FindingKind.GAP, gap);
        Interval sagging = new Interval(gap.fromMs() - 36 * HOUR_MS, gap.fromMs());
        planting.may(FindingKind.LOW_SUPPLY, sagging);
        done++;
      }
    }
    builder.frequency(new Dropouts(draws.spread(0.001, 0.02)));
  }

  private void deadWire(int wire) {
    long from = instant(0.1, 0.3);
    long lengthMs = (long) (draws.between(0.1, 0.25) * span.lengthMs());
    Interval dead = new Interval(from, from + lengthMs / MINUTE_MS * MINUTE_MS);
    builder.frequency(new DeadWire(wire, dead, minutes(10, 24 * 60)));
    mark(wire, dead, "Jumps about, then nothing.");
    planting.due(FindingKind.SILENT_WIRE, dead, planting.wire(wire));
  }

  private void driftingWire(int wire) {
    long from = instant(0.55, 0.65);
    long lengthMs = (long) (draws.between(0.1, 0.3) * span.lengthMs());
    Interval creep = new Interval(from, from + lengthMs / MINUTE_MS * MINUTE_MS);
    double mmPerDay = draws.spread(0.03, 0.4) * (draws.chance(0.5) ? 1 : -1);
    builder.depth(new DriftingWire(wire, creep, mmPerDay));
    mark(wire, creep, "Creeps away from the others.");
    planting.due(FindingKind.DRIFTING_WIRE, creep, planting.wire(wire));
  }

  private void mark(int wire, Interval interval, String note) {
    entries.add(
        new Entry.BadInterval(
            header(interval, note),
            interval,
            Set.of(sheet.wires().get(wire).name()),
            BadReason.WIRE_FAULT));
  }
}
