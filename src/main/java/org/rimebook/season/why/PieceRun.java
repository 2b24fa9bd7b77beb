package org.rimebook.season.why;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;

/**
 * Pieces of one kind that follow each other.
 *
 * @param kind their kind
 * @param interval from the start of the first to the end of the last
 * @param catchMm catch of all [mm]
 */
record PieceRun(CatchSeries.Kind kind, Interval interval, double catchMm) {

  /**
   * The runs in a span of time, cut at its edges; one of unknown timing is whole, as no part of its
   * catch can be told from the rest.
   */
  static List<PieceRun> in(CatchSeries series, Interval span) {
    List<PieceRun> runs = new ArrayList<>();
    int piece = series.pieceAt(span.fromMs());
    for (; piece < series.size() && series.fromMs(piece) < span.toMs(); piece++) {
      long fromMs = series.fromMs(piece);
      long toMs = series.toMs(piece);
      CatchSeries.Kind kind = series.kind(piece);
      double share = 1;
      if (!kind.timingUnknown()) {
        fromMs = Math.max(fromMs, span.fromMs());
        toMs = Math.min(toMs, span.toMs());
        share = (toMs - fromMs) / (double) (series.toMs(piece) - series.fromMs(piece));
      }
      if (toMs > fromMs) {
        add(runs, new PieceRun(kind, new Interval(fromMs, toMs), share * series.catchMm(piece)));
      }
    }
    return runs;
  }

  private static void add(List<PieceRun> runs, PieceRun next) {
    int last = runs.size() - 1;
    if (last >= 0 && runs.get(last).kind == next.kind && !next.kind.timingUnknown()) {
      PieceRun run = runs.get(last);
      Interval joined = new Interval(run.interval.fromMs(), next.interval.toMs());
      runs.set(last, new PieceRun(run.kind, joined, run.catchMm + next.catchMm));
    } else {
      runs.add(next);
    }
  }

  /** What its kind says. */
  String words() {
    return switch (kind) {
      case DRY_STEP -> "dry: the readings show no catch";
      case WET_STEP -> "wet: the readings show catch";
      case GAP_CATCH -> "gap: the level rose across it, timing unknown";
      case GAP_STILL -> "gap: the level didn't rise beyond its uncertainty";
      case LATE_CATCH -> "late catch: timing unknown by an entry";
      case VISIT -> "service visit: no change of level is catch";
      case DRY_SPELL -> "dry spell by an entry: nothing fell";
      case ESTIMATE -> "the analyst's own total, timing unknown";
      case UNKNOWN -> "no level to compare: not known";
    };
  }
}
