package org.rimebook.accumulation;

/** Variance of what came together from an instant on, as pieces of a series are added in order. */
final class CatchSum {

  private final CatchSeries series;
  private final long fromMs;
  private final Levels levels;
  private double otherMm2;
  private double wetHours;
  private double dryHours;
  private double doubtMm;
  private double byLevelMm;

  CatchSum(CatchSeries series, long fromMs) {
    this.series = series;
    this.fromMs = fromMs;
    this.levels = new Levels();
  }

  /** Another that goes on from here. */
  CatchSum(CatchSum before) {
    this(before.series, before.fromMs);
    levels.varianceMm2 = before.levels.varianceMm2;
    levels.sharedMm2 = before.levels.sharedMm2;
    otherMm2 = before.otherMm2;
    wetHours = before.wetHours;
    dryHours = before.dryHours;
    doubtMm = before.doubtMm;
    byLevelMm = before.byLevelMm;
  }

  /** Adds the piece that follows, up to an instant. */
  void add(int piece, long toMs) {
    double hours = series.overlapMs(piece, fromMs, toMs) / CatchSeries.HOUR_MS;
    if (series.kind(piece).byLevel()) {
      levels.caught(piece);
      wetHours += hours;
      doubtMm += series.doubtMmPerH[piece] * hours;
      byLevelMm += series.share(piece, fromMs, toMs) * series.catchMm(piece);
    } else if (series.kind(piece) == CatchSeries.Kind.DRY_STEP) {
      levels.stayed(piece);
      dryHours += hours;
    } else {
      levels.cut();
      otherMm2 += series.otherVariance(piece, fromMs, toMs);
    }
  }

  /** The variance up to here. */
  CatchVariance variance() {
    double wanderingHours = wetHours > 0 ? wetHours : dryHours;
    double common = series.commonShare * byLevelMm;
    return new CatchVariance(
        Math.max(0, levels.varianceMm2 + otherMm2),
        series.dryDriftMm2PerH * wanderingHours,
        common * common + doubtMm * doubtMm);
  }

  /**
   * Variance of the levels after wet pieces less those before them, piece by piece: a dry level
   * between two wet stretches is the end of one and the start of the other, and its error cancels
   * as far as it is still the same level.
   */
  private final class Levels {
    private double varianceMm2;

    /** Covariance of what was caught so far with the level reached [mm²]. */
    private double sharedMm2;

    void caught(int piece) {
      double startMm2 = series.startMm2[piece];
      double endMm2 = series.endMm2[piece];
      double both = correlation(piece) * Math.sqrt(startMm2 * endMm2);
      double shared = sharedMm2;
      stayed(piece);
      varianceMm2 += startMm2 + endMm2 - 2 * both + 2 * (sharedMm2 - shared);
      sharedMm2 += endMm2 - both;
    }

    void stayed(int piece) {
      double startMm2 = series.startMm2[piece];
      sharedMm2 *=
          startMm2 > 0 ? correlation(piece) * Math.sqrt(series.endMm2[piece] / startMm2) : 0;
    }

    void cut() {
      sharedMm2 = 0;
    }

    /** Of the errors of the levels at the ends of a piece. */
    private double correlation(int piece) {
      double startMm2 = series.startMm2[piece];
      return startMm2 > 0
          ? Math.min(1, series.gain[piece] * Math.sqrt(series.endMm2[piece] / startMm2))
          : 0;
    }
  }
}
