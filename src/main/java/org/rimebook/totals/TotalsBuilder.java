package org.rimebook.totals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;
import org.rimebook.undercatch.Phase;
import org.rimebook.undercatch.Undercatch;

/** Makes hourly and daily totals. */
public final class TotalsBuilder {

  private static final long HOUR_MS = Clock.HOUR_MS;

  private final Evidence evidence;
  private final Resolution resolution;
  private final Interval span;
  private final HourCatch[] hours;
  private final HourReadings readings;
  private final WireAgreement agreement;
  private final HourAdjustment adjustment;

  private TotalsBuilder(Evidence evidence, Resolution resolution) {
    this.evidence = evidence;
    this.resolution = resolution;
    CatchSeries series = evidence.series();
    Clock clock = Clock.of(evidence.sheet());
    long last = series.toMs(series.size() - 1);
    long intervalMs = Math.min(HOUR_MS, evidence.record().sampling().get(0).intervalMs());
    this.span =
        new Interval(
            firstHour(clock, series.fromMs(0), intervalMs), clock.hourStart(last - 1) + HOUR_MS);
    this.hours = HourlyCatch.of(series, span, intervalMs);
    this.agreement = WireAgreement.of(evidence, span);
    this.readings = HourReadings.of(evidence, span);
    this.adjustment =
        new HourAdjustment(Undercatch.of(evidence.sheet()), hours, readings.weather());
  }

  /**
   * The first hour a record touches: that of its first reading, which closes a sampling interval,
   * unless the interval is short beside an hour or a day starts at the reading.
   */
  private static long firstHour(Clock clock, long firstStampMs, long intervalMs) {
    boolean opens =
        intervalMs <= HourlyCatch.TOLERANCE_MS || clock.dayStart(firstStampMs) == firstStampMs;
    return clock.hourStart(opens ? firstStampMs : firstStampMs - intervalMs);
  }

  /** The totals of a season, a pure function of the evidence. */
  public static Totals build(Evidence evidence, Resolution resolution) {
    List<TotalRow> hourly = new TotalsBuilder(evidence, resolution).hourly();
    List<TotalRow> daily = DailyTotals.of(hourly, evidence, resolution);
    return new Totals(resolution, hourly, daily);
  }

  private List<TotalRow> hourly() {
    List<TotalRow> rows = new ArrayList<>();
    double sumMm = 0;
    double adjustedSumMm = 0;
    for (int h = 0; h < hours.length; h++) {
      long before = resolution.units(sumMm);
      sumMm += hours[h].catchMm;
      OptionalLong units =
          hasTotal(h) ? OptionalLong.of(resolution.units(sumMm) - before) : OptionalLong.empty();
      OptionalDouble adjusted =
          units.isPresent() ? adjustment.adjustedMm(h) : OptionalDouble.empty();
      OptionalLong adjustedUnits = OptionalLong.empty();
      if (adjusted.isPresent()) {
        long adjustedBefore = resolution.units(adjustedSumMm);
        adjustedSumMm += adjusted.getAsDouble();
        adjustedUnits = OptionalLong.of(resolution.units(adjustedSumMm) - adjustedBefore);
      }
      rows.add(row(h, units, adjustedUnits));
    }
    return rows;
  }

  private boolean unknownThroughout(int h) {
    return hours[h].accumulatedFrom == h
        && hours[h].unknownMs >= HOUR_MS - HourlyCatch.TOLERANCE_MS;
  }

  private boolean hasTotal(int h) {
    return hours[h].accumulatedTo == h && !unknownThroughout(h);
  }

  private TotalRow row(int h, OptionalLong units, OptionalLong adjustedUnits) {
    HourCatch hour = hours[h];
    long start = span.fromMs() + h * HOUR_MS;
    long since = span.fromMs() + hour.accumulatedFrom * HOUR_MS;
    Set<Reason> reasons = EnumSet.copyOf(readings.reasons(h));
    reasons.addAll(hour.reasons);
    boolean total = units.isPresent();
    if (total && units.getAsLong() == 0 && hour.catchMm > resolution.mm() / 100) {
      reasons.add(Reason.TRACE);
    }
    if (total && agreement.broken(h)) {
      reasons.add(Reason.WIRES_DISAGREE);
    }
    return new TotalRow(
        new Interval(start, start + HOUR_MS),
        units,
        total ? OptionalDouble.of(uncertaintyMm(h, since)) : OptionalDouble.empty(),
        quality(h),
        readings.completeness(h),
        wires(h),
        total && hour.accumulatedFrom < h ? OptionalLong.of(since) : OptionalLong.empty(),
        adjustedUnits,
        total && units.getAsLong() > 0 ? phase(h) : Optional.empty(),
        reasons);
  }

  /** Wires that disagree by d leave the truth anywhere within d (JCGM 100:2008, 4.3.7). */
  private double uncertaintyMm(int h, long sinceMs) {
    long endMs = span.fromMs() + (h + 1) * HOUR_MS;
    double variance =
        evidence.series().varianceMm2(sinceMs, endMs) + resolution.roundingVarianceMm2();
    double spread = agreement.broken(h) ? agreement.spreadMm(h) : 0;
    return Math.sqrt(variance + spread * spread / 12);
  }

  private Quality quality(int h) {
    HourCatch hour = hours[h];
    if (!hasTotal(h)) {
      return Quality.MISSING;
    }
    if (hour.unknownMs > HourlyCatch.TOLERANCE_MS) {
      return Quality.POOR;
    }
    if (agreement.broken(h)) {
      return Quality.SUSPECT;
    }
    if (hour.estimated || readings.completeness(h) == 0) {
      return Quality.ESTIMATE;
    }
    return readings.reasons(h).contains(Reason.ONE_WIRE) ? Quality.UNCHECKED : Quality.GOOD;
  }

  private List<String> wires(int h) {
    List<String> names = new ArrayList<>();
    for (int wire = 0; wire < evidence.sheet().wires().size(); wire++) {
      if (readings.used(wire, h)) {
        names.add(evidence.sheet().wires().get(wire).name());
      }
    }
    return names;
  }

  private Optional<Phase> phase(int h) {
    OptionalDouble temperature = readings.weather().hourlyAirTemperatureC(h);
    return hours[h].accumulatedFrom < h || temperature.isEmpty()
        ? Optional.empty()
        : Optional.of(Phase.at(temperature.getAsDouble()));
  }
}
