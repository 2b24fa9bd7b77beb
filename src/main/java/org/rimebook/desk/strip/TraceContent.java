package org.rimebook.desk.strip;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.series.Columns;
import org.rimebook.desk.series.Series;
import org.rimebook.desk.series.TraceSeries;
import org.rimebook.station.Interval;

/** Lines over time: one for each wire, for the bucket, or for a channel. */
final class TraceContent implements Content {

  private static final double FAINT = 0.45;

  private final List<Trace> traces;
  private final Scale scale;
  private Interval visible = new Interval(0, 1);

  /**
   * How values are told and fitted.
   *
   * @param unit unit with the values
   * @param decimals decimals of a value
   * @param leastSpan the least the y-axis spans when it fits
   * @param fitsLeftOut whether readings left out are fitted into the view as well
   */
  record Scale(String unit, int decimals, double leastSpan, boolean fitsLeftOut) {}

  TraceContent(List<TraceSeries> traces, Scale scale) {
    this.traces = traces.stream().map(Trace::of).toList();
    this.scale = scale;
  }

  @Override
  public void look(Interval stretch, int columns) {
    visible = stretch;
    traces.get(0).used().look(stretch, columns);
    for (Trace trace : traces) {
      if (trace != traces.get(0)) {
        trace.used().look(stretch, traces.get(0).used());
      }
      trace.leftOut().look(stretch, columns);
    }
  }

  @Override
  public Extent inView() {
    Extent used = Extent.NONE;
    Extent leftOut = Extent.NONE;
    for (Trace trace : traces) {
      used = used.and(extent(trace.used()));
      leftOut = leftOut.and(extent(trace.leftOut()));
    }
    Extent all = scale.fitsLeftOut() || used.isEmpty() ? used.and(leftOut) : used;
    return all.isEmpty() ? all : all.padded(0.06, scale.leastSpan());
  }

  /** The values in columns. */
  static Extent extent(Columns columns) {
    double least = Extent.NONE.least();
    double most = Extent.NONE.most();
    for (int column = 0; column < columns.width(); column++) {
      least = Math.min(least, columns.least(column));
      most = Math.max(most, columns.most(column));
    }
    return new Extent(least, most);
  }

  @Override
  public BitSet covered() {
    BitSet covered = new BitSet();
    for (Trace trace : traces) {
      Coverage.cover(trace.used(), covered);
      Coverage.cover(trace.leftOut(), covered);
    }
    return covered;
  }

  @Override
  public void draw(Graphics2D graphics, Canvas canvas, Emphasis emphasis) {
    TracePainter painter = new TracePainter(graphics, canvas);
    List<Trace> order = new ArrayList<>(traces);
    order.sort(Comparator.comparing(trace -> emphasis.isChosen(trace.name())));
    for (Trace trace : order) {
      Color colour = emphasis.of(trace.name(), trace.wire());
      graphics.setColor(Emphasis.mixed(colour, Look.paper(), FAINT));
      painter.marks(trace.leftOut());
      graphics.setColor(colour);
      painter.line(trace.used(), stroke(trace, canvas, emphasis));
    }
  }

  private static BasicStroke stroke(Trace trace, Canvas canvas, Emphasis emphasis) {
    BasicStroke own = trace.wire() < 0 ? Look.line() : Look.wireLine(trace.wire());
    float by = (float) (canvas.scale() * (emphasis.isChosen(trace.name()) ? 1.6 : 1));
    float[] dashes = own.getDashArray();
    if (dashes != null) {
      for (int i = 0; i < dashes.length; i++) {
        dashes[i] *= (float) canvas.scale();
      }
    }
    return new BasicStroke(
        own.getLineWidth() * by, own.getEndCap(), own.getLineJoin(), 1, dashes, 0);
  }

  @Override
  public List<Label> ends() {
    List<Label> labels = new ArrayList<>();
    for (Trace trace : traces) {
      Columns columns = trace.used();
      int column = columns.width() - 1;
      while (column >= 0 && !columns.holds(column)) {
        column--;
      }
      if (column >= 0 && !trace.name().isEmpty()) {
        double value = columns.series().value(columns.last(column));
        labels.add(new Label(trace.name(), trace.wire(), value));
      }
    }
    return labels;
  }

  @Override
  public List<Reading> at(long epochMs) {
    long columnMs = visible.lengthMs() / Math.max(1, traces.get(0).used().width());
    List<Reading> readings = new ArrayList<>();
    for (Trace trace : traces) {
      readings.add(new Reading(trace.name(), trace.wire(), words(trace, epochMs, columnMs)));
    }
    return readings;
  }

  private String words(Trace trace, long epochMs, long columnMs) {
    int used = Nearest.of(trace.used().series(), epochMs, columnMs);
    int leftOut = Nearest.of(trace.leftOut().series(), epochMs, columnMs);
    if (used < 0 && leftOut < 0) {
      return "no reading";
    }
    if (leftOut >= 0 && (used < 0 || closer(trace, leftOut, used, epochMs))) {
      return number(trace.leftOut().series(), leftOut) + ", left out";
    }
    return number(trace.used().series(), used);
  }

  private static boolean closer(Trace trace, int leftOut, int used, long epochMs) {
    return Math.abs(trace.leftOut().series().timeMs(leftOut) - epochMs)
        < Math.abs(trace.used().series().timeMs(used) - epochMs);
  }

  private String number(Series series, int index) {
    return Numbers.fixed(series.value(index), scale.decimals()) + " " + scale.unit();
  }
}
