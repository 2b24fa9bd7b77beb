package org.rimebook.totals;

import java.util.List;
import java.util.OptionalLong;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;
import org.rimebook.undercatch.Undercatch;

/**
 * What is known of each hour of a season, before anything is rounded; totals at any resolution are
 * made of it. Immutable to the eye.
 */
public final class Hours {

  static final long HOUR_MS = Clock.HOUR_MS;

  private final Evidence evidence;
  private final Interval span;
  private final HourCatch[] hours;
  private final HourReadings readings;
  private final WireAgreement agreement;
  private final HourAdjustment adjustment;
  private final Variances variances;

  private Hours(
      Evidence evidence,
      Interval span,
      HourReadings readings,
      WireAgreement agreement,
      Variances variances) {
    this.evidence = evidence;
    this.span = span;
    this.hours = HourlyCatch.of(evidence.series(), span, intervalMs(evidence));
    this.readings = readings;
    this.agreement = agreement;
    this.variances = variances;
    this.adjustment =
        new HourAdjustment(Undercatch.of(evidence.sheet()), hours, readings.weather());
  }

  /** The hours of a season, a pure function of the evidence. */
  public static Hours of(Evidence evidence) {
    CatchSeries series = evidence.series();
    Clock clock = Clock.of(evidence.sheet());
    long last = series.toMs(series.size() - 1);
    Interval span =
        new Interval(
            firstHour(clock, series.fromMs(0), intervalMs(evidence)),
            clock.hourStart(last - 1) + HOUR_MS);
    return new Hours(
        evidence,
        span,
        HourReadings.of(evidence, span),
        WireAgreement.of(evidence, span),
        new Variances(series));
  }

  /**
   * The hours of the same record and sheet by other evidence.
   *
   * @param now the evidence
   * @param touched where readings are used otherwise or the catch differs; what is known of the
   *     hours outside is kept
   */
  public Hours revised(Evidence now, Interval touched) {
    return new Hours(
        now,
        span,
        readings.revised(now, touched),
        agreement.revised(now, touched),
        variances.revised(now.series(), touched));
  }

  private static long intervalMs(Evidence evidence) {
    return Math.min(HOUR_MS, evidence.record().sampling().get(0).intervalMs());
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

  /** The totals, rounded so that they add up in the printed digits. */
  public Totals totals(Resolution resolution) {
    List<TotalRow> hourly = new HourlyTotals(this, resolution).rows();
    return new Totals(resolution, hourly, DailyTotals.of(hourly, this, resolution));
  }

  /**
   * What the season of the same record and sheet would come to by another catch, as {@link
   * Totals#seasonUnits} of its totals, without making them.
   *
   * @param series the catch
   * @param resolution resolution of the totals
   */
  public OptionalLong seasonUnits(CatchSeries series, Resolution resolution) {
    return HourlyTotals.seasonUnits(HourlyCatch.of(series, span, intervalMs(evidence)), resolution);
  }

  Evidence evidence() {
    return evidence;
  }

  int count() {
    return hours.length;
  }

  /** Start of an hour [ms since epoch]. */
  long startMs(int hour) {
    return span.fromMs() + hour * HOUR_MS;
  }

  HourCatch caught(int hour) {
    return hours[hour];
  }

  HourReadings readings() {
    return readings;
  }

  WireAgreement agreement() {
    return agreement;
  }

  HourAdjustment adjustment() {
    return adjustment;
  }

  /** Variance of the catch between two instants [mm²]. */
  double varianceMm2(long fromMs, long toMs) {
    return variances.mm2(fromMs, toMs);
  }
}
