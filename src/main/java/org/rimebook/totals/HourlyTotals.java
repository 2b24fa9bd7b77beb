package org.rimebook.totals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.rimebook.station.Interval;
import org.rimebook.undercatch.Phase;

/** Rounds what each hour caught, so that the hours add up, and says how each came about. */
final class HourlyTotals {

  private static final long HOUR_MS = Clock.HOUR_MS;

  private final Hours all;
  private final Evidence evidence;
  private final HourReadings readings;
  private final WireAgreement agreement;
  private final Resolution resolution;
  private final Doubts doubts;

  HourlyTotals(Hours all, Resolution resolution) {
    this.all = all;
    this.evidence = all.evidence();
    this.readings = all.readings();
    this.agreement = all.agreement();
    this.resolution = resolution;
    this.doubts = new Doubts(evidence.findings());
  }

  /** One row an hour, in order. */
  List<TotalRow> rows() {
    List<TotalRow> rows = new ArrayList<>();
    double sumMm = 0;
    double adjustedSumMm = 0;
    for (int h = 0; h < all.count(); h++) {
      long before = resolution.units(sumMm);
      sumMm += all.caught(h).catchMm;
      OptionalLong units =
          all.caught(h).hasTotal()
              ? OptionalLong.of(resolution.units(sumMm) - before)
              : OptionalLong.empty();
      OptionalDouble adjusted =
          units.isPresent() ? all.adjustment().adjustedMm(h) : OptionalDouble.empty();
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

  /** The sum of the rows there would be of such hours; empty when none has a total. */
  static OptionalLong seasonUnits(HourCatch[] hours, Resolution resolution) {
    boolean any = false;
    long all = 0;
    double sumMm = 0;
    for (HourCatch hour : hours) {
      long before = resolution.units(sumMm);
      sumMm += hour.catchMm;
      any |= hour.hasTotal();
      all += hour.hasTotal() ? resolution.units(sumMm) - before : 0;
    }
    return any ? OptionalLong.of(all) : OptionalLong.empty();
  }

  private TotalRow row(int h, OptionalLong units, OptionalLong adjustedUnits) {
    HourCatch hour = all.caught(h);
    long start = all.startMs(h);
    long since = all.startMs(hour.accumulatedFrom);
    Set<Reason> reasons = EnumSet.copyOf(readings.reasons(h));
    reasons.addAll(hour.reasons);
    reasons.addAll(doubts.of(since, start + HOUR_MS));
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
    long endMs = all.startMs(h + 1);
    double variance = all.varianceMm2(sinceMs, endMs) + resolution.roundingVarianceMm2();
    double spread = agreement.broken(h) ? agreement.spreadMm(h) : 0;
    return Math.sqrt(variance + spread * spread / 12);
  }

  private Quality quality(int h) {
    HourCatch hour = all.caught(h);
    if (!hour.hasTotal()) {
      return Quality.MISSING;
    }
    if (hour.unknownMs > HourlyCatch.TOLERANCE_MS) {
      return Quality.POOR;
    }
    long since = all.startMs(hour.accumulatedFrom);
    if (agreement.broken(h) || !doubts.of(since, all.startMs(h + 1)).isEmpty()) {
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
    if (all.caught(h).accumulatedFrom < h || temperature.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble humidity = readings.weather().hourlyHumidityPct(h);
    return Optional.of(
        humidity.isPresent()
            ? Phase.at(
                temperature.getAsDouble(),
                humidity.getAsDouble(),
                evidence.sheet().elevationM().orElse(0))
            : Phase.at(temperature.getAsDouble()));
  }
}
