package org.rimebook.totals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;
import org.rimebook.undercatch.Phase;

/** Adds the printed hours of each climatological day, so that a day is the sum of its hours. */
final class DailyTotals {

  private final Hours all;
  private final Evidence evidence;
  private final Resolution resolution;
  private final Clock clock;
  private final List<TotalRow> hourly;
  private final List<TotalRow> days = new ArrayList<>();

  private DailyTotals(Hours all, List<TotalRow> hourly, Resolution resolution) {
    this.all = all;
    this.evidence = all.evidence();
    this.resolution = resolution;
    this.clock = Clock.of(evidence.sheet());
    this.hourly = hourly;
  }

  static List<TotalRow> of(List<TotalRow> hourly, Hours all, Resolution resolution) {
    return new DailyTotals(all, hourly, resolution).days();
  }

  private List<TotalRow> days() {
    int from = 0;
    long heldSince = Long.MAX_VALUE;
    long heldUnits = 0;
    while (from < hourly.size()) {
      long day = clock.dayStart(hourly.get(from).interval().fromMs());
      int to = from;
      while (to < hourly.size() && hourly.get(to).interval().fromMs() < day + Clock.DAY_MS) {
        to++;
      }
      List<TotalRow> hours = hourly.subList(from, to);
      long units = hours.stream().mapToLong(h -> h.catchUnits().orElse(0)).sum();
      if (runsOverEnd(to, day + Clock.DAY_MS)) {
        days.add(missing(day, hours));
        heldSince = Math.min(heldSince, day);
        heldUnits += units;
      } else {
        long since = Math.min(heldSince, day);
        days.add(day(hours, new Interval(day, day + Clock.DAY_MS), since, heldUnits + units));
        heldSince = Long.MAX_VALUE;
        heldUnits = 0;
      }
      from = to;
    }
    return days;
  }

  /** Whether a later total holds what fell before the day's end. */
  private boolean runsOverEnd(int nextHour, long dayEndMs) {
    for (int h = nextHour; h < hourly.size(); h++) {
      TotalRow row = hourly.get(h);
      if (row.accumulatedSinceMs().isPresent()) {
        return row.accumulatedSinceMs().getAsLong() < dayEndMs;
      }
      if (row.quality() != Quality.MISSING) {
        return false;
      }
    }
    return false;
  }

  private TotalRow missing(long day, List<TotalRow> hours) {
    Set<Reason> reasons = reasons(hours);
    reasons.remove(Reason.TRACE);
    return new TotalRow(
        new Interval(day, day + Clock.DAY_MS),
        OptionalLong.empty(),
        OptionalDouble.empty(),
        Quality.MISSING,
        completeness(hours),
        wires(hours),
        OptionalLong.empty(),
        OptionalLong.empty(),
        Optional.empty(),
        reasons);
  }

  private TotalRow day(List<TotalRow> hours, Interval interval, long since, long units) {
    if (hours.stream().allMatch(h -> h.quality() == Quality.MISSING)) {
      return missing(interval.fromMs(), hours);
    }
    boolean accumulated = since < interval.fromMs();
    Set<Reason> reasons = reasons(hours);
    if (units > 0) {
      reasons.remove(Reason.TRACE);
    }
    if (hours.size() * Clock.HOUR_MS < Clock.DAY_MS) {
      reasons.add(Reason.RECORD_EDGE);
    }
    return new TotalRow(
        interval,
        OptionalLong.of(units),
        OptionalDouble.of(uncertaintyMm(hours, new Interval(since, interval.toMs()))),
        quality(hours, interval),
        completeness(hours),
        wires(hours),
        accumulated ? OptionalLong.of(since) : OptionalLong.empty(),
        accumulated ? OptionalLong.empty() : adjusted(hours),
        accumulated ? Optional.empty() : phase(hours),
        reasons);
  }

  /** From the levels at its ends; hours the wires disagree over bring their doubt along. */
  private double uncertaintyMm(List<TotalRow> hours, Interval held) {
    double variance =
        all.varianceMm2(held.fromMs(), held.toMs()) + resolution.roundingVarianceMm2();
    for (TotalRow hour : hours) {
      if (hour.reasons().contains(Reason.WIRES_DISAGREE)) {
        double doubtMm = hour.uncertaintyMm().orElse(0);
        variance += doubtMm * doubtMm;
      }
    }
    return Math.sqrt(variance);
  }

  private Quality quality(List<TotalRow> hours, Interval interval) {
    Quality worst = Quality.GOOD;
    long known = 0;
    for (TotalRow hour : hours) {
      Quality quality = hour.quality();
      if (quality == Quality.MISSING) {
        known += accumulatesWithin(hour, hours) ? 1 : 0;
        continue;
      }
      known++;
      boolean judged = quality != Quality.ESTIMATE || !measured(hour, interval);
      if (judged && quality.compareTo(worst) > 0) {
        worst = quality;
      }
    }
    boolean complete = known * Clock.HOUR_MS == interval.lengthMs();
    return complete || worst == Quality.POOR ? worst : Quality.POOR;
  }

  private static boolean accumulatesWithin(TotalRow missing, List<TotalRow> hours) {
    return hours.stream()
        .filter(h -> h.interval().fromMs() > missing.interval().fromMs())
        .filter(h -> h.quality() != Quality.MISSING)
        .findFirst()
        .filter(h -> h.accumulatedSinceMs().isPresent())
        .filter(h -> h.accumulatedSinceMs().getAsLong() <= missing.interval().fromMs())
        .isPresent();
  }

  /**
   * A gap without change of level inside a day leaves the day measured: its level is known before
   * and after. Only one that runs over an edge of the day rests on judgement.
   */
  private boolean measured(TotalRow hour, Interval day) {
    return !hour.reasons().contains(Reason.ANALYST_ESTIMATE)
        && !stillOver(day.fromMs())
        && !stillOver(day.toMs());
  }

  private boolean stillOver(long edgeMs) {
    CatchSeries series = evidence.series();
    int piece = series.pieceAt(edgeMs);
    return series.kind(piece) == CatchSeries.Kind.GAP_STILL
        && series.fromMs(piece) < edgeMs - HourlyCatch.TOLERANCE_MS
        && series.toMs(piece) > edgeMs + HourlyCatch.TOLERANCE_MS;
  }

  private static double completeness(List<TotalRow> hours) {
    return hours.stream().mapToDouble(TotalRow::completeness).sum() * Clock.HOUR_MS / Clock.DAY_MS;
  }

  private List<String> wires(List<TotalRow> hours) {
    Set<String> used = new LinkedHashSet<>();
    hours.forEach(h -> used.addAll(h.wires()));
    return evidence.sheet().wires().stream().map(Wire::name).filter(used::contains).toList();
  }

  private static Set<Reason> reasons(List<TotalRow> hours) {
    Set<Reason> reasons = EnumSet.noneOf(Reason.class);
    hours.forEach(h -> reasons.addAll(h.reasons()));
    return reasons;
  }

  private static OptionalLong adjusted(List<TotalRow> hours) {
    long units = 0;
    for (TotalRow hour : hours) {
      if (hour.adjustedUnits().isEmpty()) {
        return OptionalLong.empty();
      }
      units += hour.adjustedUnits().getAsLong();
    }
    return OptionalLong.of(units);
  }

  private static Optional<Phase> phase(List<TotalRow> hours) {
    List<Optional<Phase>> phases =
        hours.stream()
            .filter(h -> h.catchUnits().orElse(0) > 0)
            .map(TotalRow::phase)
            .distinct()
            .toList();
    if (phases.isEmpty() || phases.contains(Optional.empty())) {
      return Optional.empty();
    }
    return phases.size() == 1 ? phases.get(0) : Optional.of(Phase.MIXED);
  }
}
