package org.rimebook.practice.faults;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.findings.FindingKind;
import org.rimebook.practice.Poured;
import org.rimebook.practice.Rattle;
import org.rimebook.practice.Visit;
import org.rimebook.practice.bench.Draws;
import org.rimebook.practice.bench.Planting;
import org.rimebook.record.SamplingFinder;
import org.rimebook.record.SeasonRecord;
import org.rimebook.station.Interval;
import org.rimebook.station.StationSheet;

/** Faults of the record as the logger wrote it, and visits. */
final class RecordFaults {

  private static final long MINUTE_MS = 60_000;
  private static final long HOUR_MS = 60 * MINUTE_MS;
  private static final long DAY_MS = 24 * HOUR_MS;
  private static final int TRIES = 200;
  private static final int FIRST_HOUR = 8;
  private static final int LAST_HOUR = 16;

  /** A step of the clock that isn't a whole part of an hour. */
  private static final long ODD_MS = 7 * MINUTE_MS;

  private static final long WHOLE_MS = 30 * MINUTE_MS;

  private RecordFaults() {}

  /** Something is poured in, or the bucket lifted and put back; by day. */
  static void smallVisits(Planting planting) {
    Draws draws = planting.draws();
    int count = (int) Math.max(1, planting.span().lengthMs() / (40 * DAY_MS));
    for (int done = 0, tries = 0; done < count && tries < TRIES; tries++) {
      long lengthMs = Math.round(draws.spread(12, 70)) * MINUTE_MS;
      Interval visit = byDay(planting, (done + draws.between(0.1, 0.9)) / count, lengthMs);
      Interval wide = new Interval(visit.fromMs() - HOUR_MS, visit.toMs() + HOUR_MS);
      if (planting.falling().amountMm(wide) == 0 && planting.take(visit)) {
        smallVisit(planting, visit, done);
        planting.due(FindingKind.UNMARKED_VISIT, visit);
        done++;
      }
    }
  }

  private static void smallVisit(Planting planting, Interval visit, int number) {
    Draws draws = planting.draws();
    planting.builder().depth(new Rattle(visit, draws.spread(1, 5)));
    if (number % 3 == 2) {
      planting.builder().visit(new Visit(visit, false, 0));
    } else {
      double litres = number % 3 == 0 ? draws.between(0.08, 0.3) : draws.between(0.5, 2);
      double mm = Visit.depthMm(litres, planting.sheet().gauge().orificeAreaCm2());
      long from = visit.fromMs() + visit.lengthMs() / 3;
      planting.builder().depth(new Poured(from, draws.below(3) * MINUTE_MS + 20_000, mm));
    }
  }

  private static Interval byDay(Planting planting, double share, long lengthMs) {
    long offsetMs = planting.sheet().utcOffset().getTotalSeconds() * 1000L;
    long at = planting.span().fromMs() + (long) (share * planting.span().lengthMs());
    long midnight = Math.floorDiv(at + offsetMs, DAY_MS) * DAY_MS - offsetMs;
    long minutes = Math.round(planting.draws().between(FIRST_HOUR, LAST_HOUR) * 60);
    long from = midnight + minutes * MINUTE_MS;
    return new Interval(from, from + lengthMs);
  }

  /** The clock jumps, and is set right days later. */
  static void clockJump(Planting planting) {
    Draws draws = planting.draws();
    long start = planting.span().fromMs();
    List<WrongClock.Setting> settings = new ArrayList<>();
    settings.add(new WrongClock.Setting(start, 0, 0, 0));
    double at = draws.between(0.1, 0.25);
    for (int i = 0; i < 2; i++) {
      boolean forward = draws.chance(0.5);
      long by = jumpMs(draws);
      long phaseMs = draws.chance(0.5) ? 0 : 1000L * draws.below(20);
      long from = start + (long) (at * planting.span().lengthMs()) / MINUTE_MS * MINUTE_MS;
      long to = from + (long) (draws.spread(2, 30) * DAY_MS) / MINUTE_MS * MINUTE_MS;
      settings.add(new WrongClock.Setting(from, forward ? by : -by, 0, phaseMs));
      settings.add(new WrongClock.Setting(to, 0, 0, 0));
      planting.due(
          FindingKind.CLOCK_JUMP,
          forward ? new Interval(from + by, to + by) : new Interval(from - by, to - by));
      long hole = forward ? from : to - by;
      planting.may(FindingKind.GAP, new Interval(hole, hole + by));
      at += draws.between(0.4, 0.5);
    }
    logs(planting, settings);
  }

  private static long jumpMs(Draws draws) {
    long by = Math.round(draws.spread(20, 600)) * MINUTE_MS;
    long off = Math.floorMod(by + WHOLE_MS / 2, WHOLE_MS) - WHOLE_MS / 2;
    return Math.abs(off) < ODD_MS ? by + 2 * ODD_MS : by;
  }

  private static void logs(Planting planting, List<WrongClock.Setting> settings) {
    planting.logs(record -> WrongClock.record(record, planting.sheet(), settings));
  }

  /** Summer time put on by the logger in March, or taken off early in winter. */
  static void summerTime(Planting planting) {
    Draws draws = planting.draws();
    long start = planting.span().fromMs();
    long length = planting.span().lengthMs();
    boolean spring = draws.chance(0.5);
    double share = spring ? draws.between(0.7, 0.85) : draws.between(0.1, 0.25);
    long at = start + (long) (share * length) / HOUR_MS * HOUR_MS;
    logs(
        planting,
        List.of(
            new WrongClock.Setting(start, spring ? 0 : HOUR_MS, 0, 0),
            new WrongClock.Setting(at, spring ? HOUR_MS : 0, 0, 0)));
    if (spring) {
      planting.due(
          FindingKind.CLOCK_OFFSET, new Interval(at + HOUR_MS, planting.span().toMs() + HOUR_MS));
      planting.may(FindingKind.GAP, new Interval(at, at + HOUR_MS));
      planting.may(FindingKind.CLOCK_JUMP, new Interval(at, at + HOUR_MS));
    } else {
      planting.due(FindingKind.CLOCK_OFFSET, new Interval(start + HOUR_MS, at + HOUR_MS));
      planting.may(FindingKind.CLOCK_JUMP, new Interval(at, at + HOUR_MS));
    }
  }

  /** The clock has the time of another part of the world. */
  static void wrongZone(Planting planting) {
    Draws draws = planting.draws();
    long hours = (4 + draws.below(7)) * (draws.chance(0.5) ? 1 : -1);
    long by = hours * HOUR_MS;
    Interval span = planting.span();
    logs(planting, List.of(new WrongClock.Setting(span.fromMs(), by, 0, 0)));
    planting.due(FindingKind.CLOCK_OFFSET, span);
    planting.showsLater(by);
  }

  /** The clock gains or loses and is set right at intervals of weeks. */
  static void clockDrift(Planting planting) {
    Draws draws = planting.draws();
    double minutesPerDay = draws.spread(0.3, 1.5) * (draws.chance(0.5) ? 1 : -1);
    double gain = minutesPerDay * MINUTE_MS / DAY_MS;
    List<WrongClock.Setting> settings = new ArrayList<>();
    long at = planting.span().fromMs();
    long last = at;
    while (at < planting.span().toMs() - 15 * DAY_MS) {
      settings.add(new WrongClock.Setting(at, 0, gain, 0));
      last = at;
      long next = at + Math.round(draws.between(24, 40) * 24 * 60) * MINUTE_MS;
      if (gain < 0 && next < planting.span().toMs()) {
        long by = Math.round(-gain * (next - at));
        planting.may(FindingKind.GAP, new Interval(next - by, next));
      }
      at = next;
    }
    logs(planting, settings);
    planting.due(FindingKind.CLOCK_DRIFT, new Interval(planting.span().fromMs(), last + HOUR_MS));
  }

  /** Somebody makes the logger read less often, and as often again weeks later. */
  static void samplingChange(Planting planting) {
    Draws draws = planting.draws();
    long length = planting.span().lengthMs();
    long from = planting.span().fromMs() + (long) (draws.between(0.2, 0.4) * length);
    long to = planting.span().fromMs() + (long) (draws.between(0.5, 0.8) * length);
    Interval coarse = new Interval(from, to);
    planting.builder().loggedEvery(2 + draws.below(9), coarse);
    StationSheet sheet = planting.sheet();
    planting.logs(record -> sampledAnew(record, sheet));
    planting.due(FindingKind.SAMPLING_CHANGE, coarse);
    planting.due(FindingKind.SAMPLING_CHANGE, new Interval(to, planting.span().toMs()));
  }

  private static SeasonRecord sampledAnew(SeasonRecord record, StationSheet sheet) {
    long[] stamps = new long[record.size()];
    for (int row = 0; row < stamps.length; row++) {
      stamps[row] = record.stampMs(row);
    }
    return new RecordCopy(record, sheet).with(SamplingFinder.find(stamps, false));
  }

  /** The supply is low for days; readings get noisy, or lost, or are as before. */
  static void lowSupply(Planting planting) {
    Draws draws = planting.draws();
    StationSheet sheet = planting.sheet();
    int count = (int) Math.max(1, planting.span().lengthMs() / (60 * DAY_MS));
    for (int done = 0, tries = 0; done < count && tries < TRIES; tries++) {
      long lengthMs = (long) (draws.spread(0.7, 6) * DAY_MS);
      long from =
          planting.span().fromMs()
              + (long) ((done + draws.between(0.1, 0.9)) / count * planting.span().lengthMs());
      Interval low = new Interval(from, from + lengthMs);
      if (planting.take(low)) {
        LowSupply fault =
            new LowSupply(
                low,
                draws.between(0.7, 2),
                done % 3 == 0 ? draws.spread(4, 20) : 0,
                done % 3 == 1 ? draws.between(0.2, 0.8) : 0);
        planting.logs(record -> fault.on(record, sheet));
        planting.due(FindingKind.LOW_SUPPLY, low);
        done++;
      }
    }
  }
}
