package org.rimebook.totals;

import java.util.Optional;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;

/** Distributes the pieces of a catch series over hours. */
final class HourlyCatch {

  /**
   * A piece of unknown timing that reaches this far into an hour or less leaves that hour alone:
   * what fell in so short a time goes to the neighbour [ms]. Our own choice: a sixth of an hour.
   */
  static final long TOLERANCE_MS = 600_000;

  private static final long HOUR_MS = Clock.HOUR_MS;
  private static final long HALF_MS = HOUR_MS / 2;

  private final CatchSeries series;
  private final long firstHourMs;
  private final HourCatch[] hours;

  private HourlyCatch(CatchSeries series, long firstHourMs, int hourCount) {
    this.series = series;
    this.firstHourMs = firstHourMs;
    this.hours = new HourCatch[hourCount];
    for (int h = 0; h < hourCount; h++) {
      hours[h] = new HourCatch(h);
    }
  }

  /**
   * The catch of consecutive hours.
   *
   * @param series the pieces
   * @param span from the start of the first hour to the end of the last
   * @param firstIntervalMs sampling interval that the first reading closes [ms]
   */
  static HourCatch[] of(CatchSeries series, Interval span, long firstIntervalMs) {
    HourlyCatch hourly = new HourlyCatch(series, span.fromMs(), (int) (span.lengthMs() / HOUR_MS));
    hourly.edge(span.fromMs(), series.fromMs(0), firstIntervalMs);
    hourly.edge(series.toMs(series.size() - 1), span.toMs(), 0);
    for (int piece = 0; piece < series.size(); piece++) {
      boolean nothing =
          series.kind(piece) == CatchSeries.Kind.DRY_STEP && series.catchMm(piece) == 0;
      if (!nothing) {
        hourly.distribute(piece);
      }
    }
    hourly.moveToLastHours();
    return hourly.hours;
  }

  private int hourOf(long epochMs) {
    return (int) ((epochMs - firstHourMs) / HOUR_MS);
  }

  private void edge(long fromMs, long toMs, long intervalMs) {
    if (toMs - fromMs > Math.max(TOLERANCE_MS, intervalMs)) {
      HourCatch hour = hours[hourOf(fromMs)];
      hour.unknownMs += toMs - fromMs;
      hour.reasons.add(Reason.RECORD_EDGE);
    }
  }

  private void distribute(int piece) {
    boolean late =
        series.kind(piece).timingUnknown() && series.catchMm(piece) > 0 && accumulates(piece);
    long length = series.toMs(piece) - series.fromMs(piece);
    for (int h = hourOf(series.fromMs(piece)); h <= hourOf(series.toMs(piece) - 1); h++) {
      long start = Math.max(series.fromMs(piece), firstHourMs + h * HOUR_MS);
      long end = Math.min(series.toMs(piece), firstHourMs + (h + 1) * HOUR_MS);
      if (!late) {
        hours[h].catchMm += series.catchMm(piece) * (end - start) / length;
        shareHalves(piece, h, start, end);
      }
      describe(piece, h, end - start);
    }
    openHalves(piece);
  }

  private void shareHalves(int piece, int h, long startMs, long endMs) {
    double perMs = series.catchMm(piece) / (series.toMs(piece) - series.fromMs(piece));
    long middle = firstHourMs + h * HOUR_MS + HALF_MS;
    hours[h].halfMm[0] += perMs * Math.max(0, Math.min(endMs, middle) - startMs);
    hours[h].halfMm[1] += perMs * Math.max(0, endMs - Math.max(startMs, middle));
  }

  /**
   * Marks hours in which catch of unknown timing may have fallen in either half. An analyst's own
   * total isn't what this gauge caught in this wind, so its halves are never known.
   */
  private void openHalves(int piece) {
    CatchSeries.Kind kind = series.kind(piece);
    if (!kind.timingUnknown() || series.catchMm(piece) <= 0) {
      return;
    }
    int first = halfOf(series.fromMs(piece) + toleranceMs(piece));
    int last = halfOf(series.toMs(piece) - 1 - toleranceMs(piece));
    if (last > first || kind == CatchSeries.Kind.ESTIMATE) {
      for (int h = first / 2; h <= last / 2; h++) {
        hours[h].halvesKnown = false;
      }
    }
  }

  private long toleranceMs(int piece) {
    return series.kind(piece) == CatchSeries.Kind.GAP_CATCH ? TOLERANCE_MS : 0;
  }

  private int halfOf(long epochMs) {
    return (int) ((epochMs - firstHourMs) / HALF_MS);
  }

  /**
   * Gives a total of unknown timing to the last hour it may have fallen in, and ties the hours
   * before it to that one. False when it lies inside one hour or about one edge of hours.
   */
  private boolean accumulates(int piece) {
    long fromMs = series.fromMs(piece);
    long toMs = series.toMs(piece);
    long toleranceMs = toleranceMs(piece);
    int first = hourOf(fromMs + toleranceMs);
    int last = hourOf(toMs - 1 - toleranceMs);
    if (hourOf(fromMs) == hourOf(toMs - 1) || last < first) {
      return false;
    }
    hours[last].catchMm += series.catchMm(piece);
    hours[last].halfMm[halfOf(toMs - 1 - toleranceMs) % 2] += series.catchMm(piece);
    if (last > first) {
      int from = hours[first].accumulatedFrom;
      for (int h = from; h <= last; h++) {
        hours[h].accumulatedFrom = from;
        hours[h].accumulatedTo = last;
      }
    }
    return true;
  }

  private void describe(int piece, int h, long lengthMs) {
    HourCatch hour = hours[h];
    boolean matters = lengthMs > TOLERANCE_MS;
    CatchSeries.Kind kind = series.kind(piece);
    if (kind == CatchSeries.Kind.UNKNOWN && matters) {
      hour.unknownMs += lengthMs;
    }
    boolean crosses = hourOf(series.fromMs(piece)) != hourOf(series.toMs(piece) - 1);
    hour.estimated |=
        kind == CatchSeries.Kind.ESTIMATE
            || (kind == CatchSeries.Kind.GAP_STILL && crosses && matters);
    reason(kind, matters).ifPresent(hour.reasons::add);
  }

  private static Optional<Reason> reason(CatchSeries.Kind kind, boolean matters) {
    return switch (kind) {
      case DRY_STEP, WET_STEP -> Optional.empty();
      case GAP_CATCH -> Optional.of(Reason.GAP);
      case GAP_STILL -> matters ? Optional.of(Reason.NO_CHANGE) : Optional.empty();
      case LATE_CATCH -> Optional.of(Reason.LATE_CATCH);
      case VISIT -> Optional.of(Reason.SERVICE_VISIT);
      case DRY_SPELL -> Optional.of(Reason.DRY_SPELL);
      case ESTIMATE -> Optional.of(Reason.ANALYST_ESTIMATE);
      case UNKNOWN -> matters ? Optional.of(Reason.UNKNOWN_CATCH) : Optional.empty();
    };
  }

  /** The last hour of an accumulation holds what is known of all its hours. */
  private void moveToLastHours() {
    for (int h = 0; h < hours.length; h++) {
      HourCatch hour = hours[h];
      if (hour.accumulatedTo > h) {
        HourCatch last = hours[hour.accumulatedTo];
        last.catchMm += hour.catchMm;
        hour.catchMm = 0;
        last.unknownMs += hour.unknownMs;
        last.estimated |= hour.estimated;
        last.reasons.addAll(hour.reasons);
      }
    }
  }
}
