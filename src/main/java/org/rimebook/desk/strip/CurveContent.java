package org.rimebook.desk.strip;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.BitSet;
import java.util.List;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.Extent;
import org.rimebook.desk.series.CatchCurve;
import org.rimebook.desk.series.Columns;
import org.rimebook.desk.series.Pyramid;
import org.rimebook.station.Interval;

/**
 * Catch added up, with a band of one standard uncertainty to each side. A box stands where it isn't
 * known when between two instants it fell.
 */
final class CurveContent implements Content {

  private static final int BAND_STEP = 4;

  private final CatchCurve curve;
  private final Columns columns;
  private Interval visible = new Interval(0, 1);

  CurveContent(Pyramid pyramid, CatchCurve curve) {
    this.curve = curve;
    this.columns = new Columns(pyramid);
  }

  @Override
  public void look(Interval stretch, int width) {
    visible = stretch;
    columns.look(stretch, width);
  }

  @Override
  public Extent inView() {
    double from = curve.sumMm(visible.fromMs()) - curve.uncertaintyMm(visible.fromMs());
    double to = curve.sumMm(visible.toMs()) + curve.uncertaintyMm(visible.toMs());
    return new Extent(from, to).padded(0.06, 1);
  }

  @Override
  public BitSet covered() {
    BitSet covered = new BitSet();
    for (int column = 0; column < columns.width(); column++) {
      long atMs = visible.fromMs() + visible.lengthMs() * column / columns.width();
      covered.set(column, columns.holds(column) || curve.known(atMs));
    }
    return covered;
  }

  @Override
  public void draw(Graphics2D graphics, Canvas canvas, Emphasis emphasis) {
    Color ink = Look.ink();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setColor(Emphasis.mixed(ink, Look.paper(), 0.16));
    graphics.fill(band(canvas));
    graphics.setColor(Look.muted());
    boxes(graphics, canvas);
    graphics.setColor(ink);
    float width = (float) (Look.line().getLineWidth() * canvas.scale());
    new TracePainter(graphics, canvas)
        .line(columns, new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
  }

  private Path2D band(Canvas canvas) {
    int width = canvas.plot().width;
    int points = (width + BAND_STEP - 1) / BAND_STEP + 1;
    int[] column = new int[points];
    double[] mm = new double[points];
    double[] byMm = new double[points];
    for (int point = 0; point < points; point++) {
      column[point] = Math.min(width, point * BAND_STEP);
      long atMs = visible.fromMs() + visible.lengthMs() * column[point] / width;
      mm[point] = curve.sumMm(atMs);
      byMm[point] = curve.uncertaintyMm(atMs);
    }
    Path2D.Double band = new Path2D.Double(Path2D.WIND_NON_ZERO, 2 * points + 1);
    band.moveTo(canvas.plot().x, canvas.y(mm[0] + byMm[0]));
    for (int point = 1; point < points; point++) {
      band.lineTo(canvas.plot().x + column[point], canvas.y(mm[point] + byMm[point]));
    }
    for (int point = points - 1; point >= 0; point--) {
      band.lineTo(canvas.plot().x + column[point], canvas.y(mm[point] - byMm[point]));
    }
    band.closePath();
    return band;
  }

  private void boxes(Graphics2D graphics, Canvas canvas) {
    float dash = (float) (3 * canvas.scale());
    graphics.setStroke(
        new BasicStroke(
            canvas.thick(1),
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_MITER,
            10,
            new float[] {dash, dash},
            0));
    box(graphics, canvas, columns.firstIndex() - 1);
    for (int column = 0; column < columns.width(); column++) {
      // A box that is seen spans several columns: no edge of a piece falls in the one after.
      boolean wide = column + 1 == columns.width() || !columns.holds(column + 1);
      if (wide && columns.holds(column)) {
        box(graphics, canvas, columns.last(column));
      }
    }
  }

  private void box(Graphics2D graphics, Canvas canvas, int piece) {
    if (piece < 0 || piece >= curve.size() - 1 || !curve.timingUnknown(piece)) {
      return;
    }
    double left = canvas.x(curve.timeMs(piece));
    double right = canvas.x(curve.timeMs(piece + 1));
    if (right - left >= canvas.thick(4)) {
      double top = canvas.y(curve.value(piece + 1));
      graphics.draw(
          new Rectangle2D.Double(left, top, right - left, canvas.y(curve.value(piece)) - top));
    }
  }

  @Override
  public List<Label> ends() {
    return List.of();
  }

  @Override
  public List<Reading> at(long epochMs) {
    String words =
        Numbers.fixed(curve.sumMm(epochMs), 1)
            + " \u00b1 "
            + Numbers.fixed(curve.uncertaintyMm(epochMs), 1)
            + " mm"
            + (curve.known(epochMs) ? "" : ", catch not known here");
    return List.of(new Reading("since the start", -1, words));
  }
}
