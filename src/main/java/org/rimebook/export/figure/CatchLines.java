package org.rimebook.export.figure;

import java.util.ArrayList;
import java.util.List;
import org.rimebook.accumulation.CatchSeries;
import org.rimebook.station.Interval;
import org.rimebook.totals.TotalRow;

/** Catch as accumulated lines, and the stretches whose timing or amount isn't known. */
final class CatchLines {

  private static final double LINE_PT = 1.1;
  private static final long LEAST_MS = 3_600_000;

  private final FigureData data;

  CatchLines(FigureData data) {
    this.data = data;
  }

  /** Catch by the level since the start of the figure; broken where it isn't known. */
  Lines accumulated() {
    CatchSeries series = data.result().series();
    Curve curve = data.curve();
    double sumMm = 0;
    for (int piece = 0; piece < series.size(); piece++) {
      long fromMs = series.fromMs(piece);
      long toMs = series.toMs(piece);
      long insideMs = Math.min(toMs, data.span().toMs()) - Math.max(fromMs, data.span().fromMs());
      if (insideMs <= 0) {
        continue;
      }
      if (series.kind(piece) == CatchSeries.Kind.UNKNOWN) {
        curve.interrupt();
        continue;
      }
      curve.add(Math.max(fromMs, data.span().fromMs()), sumMm);
      sumMm += series.catchMm(piece) * insideMs / (toMs - fromMs);
      curve.add(Math.min(toMs, data.span().toMs()), sumMm);
    }
    Lines lines = new Lines();
    lines.add("", curve, FigureLook.INK, FigureLook.line(0, LINE_PT));
    lines.include(0, 0);
    return lines;
  }

  /** Catch and adjusted catch of the hours that could be adjusted; level over the others. */
  Lines adjusted() {
    Curve caught = data.curve();
    Curve adjusted = data.curve();
    double mm = data.totals().resolution().mm();
    long caughtUnits = 0;
    long adjustedUnits = 0;
    for (TotalRow hour : data.totals().hourly()) {
      boolean inside =
          hour.interval().fromMs() >= data.span().fromMs()
              && hour.interval().toMs() <= data.span().toMs();
      if (inside && hour.adjustedUnits().isPresent()) {
        caughtUnits += hour.catchUnits().orElseThrow();
        adjustedUnits += hour.adjustedUnits().getAsLong();
      }
      caught.add(hour.interval().toMs(), caughtUnits * mm);
      adjusted.add(hour.interval().toMs(), adjustedUnits * mm);
    }
    Lines lines = new Lines();
    lines.add("catch", caught, FigureLook.INK, FigureLook.line(0, LINE_PT));
    lines.add("adjusted", adjusted, FigureLook.wire(1), FigureLook.line(1, LINE_PT));
    lines.include(0, 0);
    return lines;
  }

  /** Stretches of an hour and more where it isn't known when something fell, or whether. */
  List<Interval> untimed() {
    CatchSeries series = data.result().series();
    List<Interval> found = new ArrayList<>();
    for (int piece = 0; piece < series.size(); piece++) {
      CatchSeries.Kind kind = series.kind(piece);
      Interval at = new Interval(series.fromMs(piece), series.toMs(piece));
      boolean shown =
          (kind.timingUnknown() || kind == CatchSeries.Kind.UNKNOWN)
              && at.lengthMs() >= LEAST_MS
              && at.overlaps(data.span());
      if (shown) {
        found.add(at);
      }
    }
    return found;
  }
}
