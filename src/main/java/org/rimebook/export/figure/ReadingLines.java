package org.rimebook.export.figure;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import org.rimebook.depth.LevelSeries;
import org.rimebook.notebook.Entry;
import org.rimebook.station.Channel;
import org.rimebook.station.Interval;
import org.rimebook.station.Wire;

/** Lines through readings: of wires, of the bucket, of the weather. */
final class ReadingLines {

  private static final double THIN_PT = 0.7;
  private static final double BUCKET_PT = 0.9;

  private final FigureData data;
  private final List<Interval> visits;

  ReadingLines(FigureData data) {
    this.data = data;
    this.visits =
        data.result().season().notebook().inForce().stream()
            .filter(entry -> entry instanceof Entry.ServiceVisit)
            .flatMap(entry -> entry.span().stream())
            .toList();
  }

  Lines frequencies() {
    double hertz = data.sheet().layout().hertzPerUnit();
    Lines lines = new Lines();
    List<Wire> wires = data.sheet().wires();
    for (int wire = 0; wire < wires.size(); wire++) {
      int each = wire;
      Curve curve =
          through(
              row -> data.result().depths().used(each, row),
              row -> data.record().frequency(each).get(row) * hertz);
      lines.add(
          wires.get(wire).name(), curve, FigureLook.wire(wire), FigureLook.line(wire, THIN_PT));
    }
    return lines;
  }

  Lines depths() {
    Lines lines = new Lines();
    List<Wire> wires = data.sheet().wires();
    for (int wire = 0; wire < wires.size(); wire++) {
      int each = wire;
      Curve curve =
          through(
              row -> data.result().depths().used(each, row),
              row -> data.result().depths().depthMm(each, row));
      lines.add(
          wires.get(wire).name(), curve, FigureLook.wire(wire), FigureLook.line(wire, THIN_PT));
    }
    lines.add("bucket", level(), FigureLook.INK, FigureLook.line(0, BUCKET_PT));
    return lines;
  }

  private Curve level() {
    LevelSeries level = data.result().level();
    Curve curve = data.curve();
    long joinedMs = data.joinedMs();
    long before = Long.MIN_VALUE;
    int segment = -1;
    int end = level.indexAtOrAfter(data.endRow());
    for (int i = level.indexAtOrAfter(data.firstRow()); i < end; i++) {
      long at = data.record().stampMs(level.row(i));
      if (at - before > joinedMs || level.segment(i) != segment) {
        curve.interrupt();
      }
      curve.add(at, level.levelMm(i));
      before = at;
      segment = level.segment(i);
    }
    return curve;
  }

  /** One channel; without values when the sheet has none of the quantity. */
  Lines channel(String quantity) {
    Lines lines = new Lines();
    List<Channel> channels = data.sheet().channels();
    for (int channel = 0; channel < channels.size(); channel++) {
      if (channels.get(channel).quantity().equals(quantity)) {
        int each = channel;
        Curve curve = through(row -> true, row -> data.record().channel(each).get(row));
        lines.add("", curve, FigureLook.INK, FigureLook.line(0, THIN_PT));
        return lines;
      }
    }
    return lines;
  }

  /** Whether someone was at the gauge between two readings. */
  private boolean visited(long fromMs, long toMs) {
    for (Interval visit : visits) {
      if (visit.fromMs() < toMs && visit.toMs() > fromMs) {
        return true;
      }
    }
    return false;
  }

  private Curve through(IntPredicate shown, IntToDoubleFunction value) {
    Curve curve = data.curve();
    long joinedMs = data.joinedMs();
    long before = Long.MIN_VALUE;
    int end = data.endRow();
    for (int row = data.firstRow(); row < end; row++) {
      double now = shown.test(row) ? value.applyAsDouble(row) : Double.NaN;
      if (!Double.isNaN(now)) {
        long at = data.record().stampMs(row);
        if (before != Long.MIN_VALUE && (at - before > joinedMs || visited(before, at))) {
          curve.interrupt();
        }
        curve.add(at, now);
        before = at;
      }
    }
    return curve;
  }
}
